#include "gui/models/note_form.h"

#include "domain/ledger/notes.h"
#include "gui/models/form/fact_form.h"
#include "reports/words/fact_words.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

std::string title_of(const Shop& shop, const AnyKey& about) {
    const auto fact = fact_ref(about);
    const std::string what = fact ? reports::fact_words(shop, *fact) : std::string{};
    return what.empty() ? say("A note") : say("A note on {what}", arg("what", what));
}

Form form_of(FactForm<Note>&& form, const Shop& shop) {
    form.form().title = title_of(shop, form.fact().about);
    form.add("text", say("&What to remember"), &Note::text)
        .add("file", say("Name of a &file"), &Note::file,
             {.help = say("A photograph or a bill that belongs to it. The file stays where it is, best beside the shop "
                          "file; only its name is kept.")})
        .add("date", say("&On"), &Note::date);
    return std::move(form).done([](Note& note, Form& filled, const Writing& now, Kept& kept) {
        if (!note.text && !note.file) {
            filled.field("text").trouble = say("Write a few words, or name a file below.");
            return false;
        }
        const auto fact = fact_ref(note.about);
        kept.title = reports::message("note on {what}");
        kept.args = {{"what", fact ? reports::fact_words(now.shop(), *fact) : std::string{}}};
        kept.consequence = [](const Writing&) {
            return say("Noted. It stands beside the record, and in the list of notes on Today.");
        };
        return true;
    });
}

std::string told(const Note& note) {
    const auto day = arg("day", reports::shown_date(note.date));
    const auto text = arg("text", note.text.value_or(""));
    const auto file = arg("file", note.file.value_or(""));
    if (!note.file) return say("Noted on {day}: {text}", day, text);
    if (!note.text) return say("File of {day}: {file}", day, file);
    return say("Noted on {day}: {text} File: {file}", day, text, file);
}

}  // namespace

Form note_form(const Writing& writing, FactRef about) {
    FactForm<Note> form{writing, "note", say("A note"), std::nullopt};
    form.fact().date = writing.day;
    form.fact().about = any_key(about);
    return form_of(std::move(form), writing.shop());
}

Form note_form(const Writing& writing, Key<Note> corrected) {
    return form_of(FactForm<Note>{writing, "note", say("A note"), corrected}, writing.shop());
}

std::vector<std::string> notes_told(const Books& books, FactRef about) {
    std::vector<std::string> sentences;
    for (const Note* note : notes_on(books.shop, about))
        if (note->date <= books.as_of()) sentences.push_back(told(*note));
    return sentences;
}

}  // namespace dyestead::gui
