#include "gui/models/ten_questions.h"

#include <algorithm>

#include "domain/decisions/memory_kept.h"
#include "gui/models/form/field_values.h"
#include "reports/words/memory_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/verdict_words.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

std::string id_of(Recalled blank) {
    return std::string{kWords<Recalled>[static_cast<std::size_t>(blank)]};
}

std::string strength_words(StrengthWord word) {
    switch (word) {
        case StrengthWord::as_strong: return say("as much: mine is as strong");
        case StrengthWord::half: return say("half as much");
        case StrengthWord::third: return say("a third as much");
        case StrengthWord::tenth: return say("a tenth as much");
        case StrengthWord::never_tried: return say("never tried");
    }
    return {};
}

std::vector<Choice> strengths(const std::string& answered) {
    std::vector<Choice> choices;
    for (std::size_t i = 0; i < kWords<StrengthWord>.size(); ++i)
        choices.push_back({std::string{kWords<StrengthWord>[i]}, strength_words(static_cast<StrengthWord>(i))});
    // A number answered at the console.
    const auto same = [&](const Choice& choice) { return choice.code == answered; };
    if (!answered.empty() && std::ranges::none_of(choices, same)) choices.push_back({answered, answered});
    return choices;
}

FormField field_of(Recalled blank, const std::string& answered) {
    FormField field;
    field.id = id_of(blank);
    field.label =
        say("{number}. {blank}", arg("number", question_of(blank)), arg("blank", reports::memory_blank(blank)));
    field.text = answered;
    field.help = say("{question} ({example})", arg("question", reports::memory_question(question_of(blank))),
                     arg("example", reports::memory_example(blank)));
    if (blank == Recalled::strength) {
        field.entry = Entry::choice;
        field.choices = strengths(answered);
    }
    return field;
}

MemoryAnswers answers_in(const Form& form) {
    MemoryAnswers answers;
    for (std::size_t i = 0; i < kRecalled; ++i) {
        const auto blank = static_cast<Recalled>(i);
        answers[blank] = form.text(id_of(blank));
    }
    return answers;
}

// The sentence the answers come to, in a shop that holds nothing but the colour's name.
std::string headline(const Memory& memory, const Writing& writing) {
    Shop shop;
    shop.all<About>() = writing.shop().all<About>();
    Colour colour;
    colour.key = {1};
    colour.name = memory.colour;
    shop.all<Colour>().push_back(colour);
    return reports::verdict_headline(shop, verdict_from_memory(memory, colour.key, writing.day));
}

bool decided_by_records(const Form& form, const Writing& writing) {
    const auto colour = colour_named(writing.shop(), form.text(id_of(Recalled::colour)));
    return colour && records_decide(writing.shop(), writing.books.ledger, *colour);
}

// True when all can be kept so. `needed`: blanks that are needed count as troubles too.
bool read(Form& form, const Writing& writing, bool needed) {
    const std::string currency = reports::currency_of(writing.shop());
    bool good = true;
    for (std::size_t i = 0; i < kRecalled; ++i) {
        const auto blank = static_cast<Recalled>(i);
        FormField& field = form.field(id_of(blank));
        field.trouble.clear();
        auto trouble = answer_trouble(blank, field.text, currency);
        if (!trouble && needed && is_needed(blank) && trimmed(field.text).empty()) trouble = Trouble{TroubleId::blank};
        if (trouble) field.trouble = field_trouble(trouble->id, field.text);
        good = good && !trouble;
    }
    if (decided_by_records(form, writing)) {
        form.field(id_of(Recalled::colour)).trouble =
            say("A vat of this colour is on record, and records decide, not memory.");
        good = false;
    }
    return good;
}

void look(Form& form, const Writing& writing) {
    form.summary.clear();
    if (!read(form, writing, false)) return;
    const auto memory = read_memory(answers_in(form), reports::currency_of(writing.shop()));
    if (const auto* known = std::get_if<Memory>(&memory)) form.summary = headline(*known, writing);
}

std::optional<Kept> keep(Form& form, const Writing& writing) {
    if (!read(form, writing, true)) return std::nullopt;
    const MemoryAnswers answers = answers_in(form);
    const auto memory = read_memory(answers, reports::currency_of(writing.shop()));
    if (!std::holds_alternative<Memory>(memory)) return std::nullopt;
    auto made = memory_kept(writing.shop(), answers, writing.day, writing.new_key_number);
    Kept kept;
    kept.change = std::move(made.change);
    kept.title = reports::message("ten questions answered for {colour}");
    kept.args = {{"colour", std::get<Memory>(memory).colour}};
    kept.consequence = [memory = std::get<Memory>(memory)](const Writing& after) { return headline(memory, after); };
    return kept;
}

}  // namespace

std::optional<Key<Colour>> colour_answered(const Form& form, const Books& books) {
    return colour_named(books.shop, form.text(id_of(Recalled::colour)));
}

Form ten_questions_form(const Writing& writing, std::optional<Key<Colour>> colour) {
    Form form;
    form.code = "ten-questions";
    form.title = say("Ten questions, answered from memory");
    MemoryAnswers answers;
    if (colour && !records_decide(writing.shop(), writing.books.ledger, *colour)) {
        answers = answers_on_record(writing.shop(), *colour, writing.day);
        if (const Colour* of = writing.shop().find(*colour)) answers[Recalled::colour] = of->name;
    }
    for (std::size_t i = 0; i < kRecalled; ++i) {
        const auto blank = static_cast<Recalled>(i);
        form.fields.push_back(field_of(blank, answers[blank]));
    }
    form.keep_label = say("Keep these answers");
    form.look = look;
    form.keep = keep;
    form.look(form, writing);
    return form;
}

}  // namespace dyestead::gui
