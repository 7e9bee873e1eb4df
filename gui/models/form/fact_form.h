// fact_form.h - a form bound to a record: each field to one of its members, each kind of line to its head. From that
// come the first texts, what was understood, the troubles, and the record once it is kept, new or corrected.
//
//   FactForm<Harvest> form{writing, "harvest", say("A cut"), corrected};
//   form.add("date", say("Cut &on"), &Harvest::date);
//   form.add("amount", say("How &much"), &Harvest::amount, {.measuring = leaf_measures});
//   form.more("note", say("No&te"), &Harvest::note);
//   return std::move(form).done([](Harvest& cut, Form& form, const Writing& writing, Kept& kept) { ...; return true;
//   });
#pragma once

#include <algorithm>
#include <memory>

#include "gui/models/form/field_values.h"
#include "gui/models/form/form.h"
#include "reports/words/names.h"

namespace dyestead::gui {

// How one field is read, where its type alone does not say.
struct FieldHow {
    Entry entry = Entry::line;
    std::vector<Choice> choices{};  // makes a `line` a `choice`
    std::string help{};
    // What an amount is of, or may be told by; asked again whenever something was typed. `texts`: of this form, or of
    // the line the field stands in.
    using Texts = std::function<const std::string&(std::string_view id)>;
    std::function<const Material*(const Texts&, const Writing&)> material{};
    std::function<Measuring(const Texts&, const Writing&)> measuring{};
};

namespace form_detail {

// One field of a record: shows it, and reads it back.
template <class Fact>
struct Binding {
    std::string id;
    FieldHow how;
    std::function<std::string(const Fact&)> show;
    // What is wrong; `understood` gets what was read.
    std::function<std::string(Fact&, const std::string& text, const Reading&, std::string& understood)> read;
};

template <class Fact, class Member>
Binding<Fact> bind(const std::string& id, Member Fact::*member, const FieldHow& how) {
    return {.id = id,
            .how = how,
            .show = [member](const Fact& fact) { return field_text(fact.*member); },
            .read = [member](Fact& fact, const std::string& text, const Reading& reading,
                             std::string& understood) -> std::string {
                const auto value = read_typed_field<Member>(text, reading);
                if (!value) return field_trouble(*value.trouble, text);
                if constexpr (std::is_same_v<typename field_detail::Is<Member>::Inner, Amount> ||
                              std::is_same_v<Member, Amount>) {
                    const std::optional<Amount> amount{*value};
                    if (amount) {
                        if (auto trouble = amount_trouble(*amount, reading)) return *trouble;
                    }
                }
                if constexpr (std::is_same_v<Member, Ratio> || std::is_same_v<Member, std::optional<Ratio>>) {
                    const std::optional<Ratio> share{*value};
                    if (is_part(member) && share && *share > Ratio{1, 1})
                        return field_trouble(TroubleId::more_than_whole, text);
                }
                fact.*member = *value;
                understood = said_back(*value, reading);
                return {};
            }};
}

inline Reading reading_for(const FieldHow& how, const FieldHow::Texts& texts, const Writing& writing) {
    Reading reading{
        .writing_for = writing.day, .currency = reports::currency_of(writing.shop()), .utc_offset = writing.utc_offset};
    if (how.measuring) reading.measuring = how.measuring(texts, writing);
    if (how.material) reading.material = how.material(texts, writing);
    return reading;
}

template <class Fact>
FormField field_for(const Binding<Fact>& binding, const std::string& label, bool more, const std::string& text) {
    const bool chosen = binding.how.entry == Entry::line && !binding.how.choices.empty();
    return {.id = binding.id,
            .label = label,
            .entry = chosen ? Entry::choice : binding.how.entry,
            .more = more,
            .text = text,
            .help = binding.how.help,
            .choices = binding.how.choices};
}

}  // namespace form_detail

// Lines of one kind, bound to their head's form. Fields that are no member of the line are added with `extra`.
template <class LineFact>
struct LineForm {
    std::string id;
    std::string name;
    std::vector<form_detail::Binding<LineFact>> bindings{};
    std::vector<FormField> fields{};
    // The texts of the fields that are no member, of a line that is there already.
    std::function<std::vector<std::pair<std::string, std::string>>(const LineFact&)> show_extra{};
    // After the members are read: what is wrong with the line, blank for nothing. New lots and the like go into `kept`.
    std::function<std::string(LineFact&, const FieldHow::Texts&, const Writing&, Kept&)> finish{};
    // What the line comes to, beside it: "6.98 a kilo".
    std::function<std::string(const LineFact&, const FieldHow::Texts&, const Writing&)> note{};

    template <class Member>
    LineForm& add(const std::string& field_id, const std::string& label, Member LineFact::*member,
                  const FieldHow& how = {}) {
        bindings.push_back(form_detail::bind(field_id, member, how));
        fields.push_back(form_detail::field_for(bindings.back(), label, false, {}));
        return *this;
    }
    LineForm& extra(FormField field) {
        fields.push_back(std::move(field));
        return *this;
    }
};

template <class Fact>
class FactForm {
public:
    // Changes the record and what goes with it before it is kept; false when it cannot be kept, and then it has put
    // the reason into a field's `trouble`.
    using Finish = std::function<bool(Fact&, Form&, const Writing&, Kept&)>;
    using Look = std::function<void(Form&, const Writing&)>;
    // The same, told what was read so far: the record, and the lines that could be read (in `lines.put`).
    using LookAt = std::function<void(const Fact&, const Change& lines, Form&, const Writing&)>;
    // Reads fields that are no members, after those that are; `kept` only when the form is kept. False as in Finish.
    using Reader = std::function<bool(Fact&, Form&, const Writing&, Kept* kept)>;

    FactForm(const Writing& writing, std::string code, std::string title, std::optional<Key<Fact>> corrected)
        : writing_{writing} {
        form_.code = std::move(code);
        form_.title = std::move(title);
        const Fact* old = corrected ? writing.shop().find(*corrected) : nullptr;
        if (old == nullptr) return;
        fact_ = *old;
        form_.fact = ref(*old);
    }

    // The record as it stands before anything is typed; to be filled with first values of a new one.
    Fact& fact() { return fact_; }
    Form& form() { return form_; }
    bool is_new() const { return !form_.fact; }

    template <class Member>
    FactForm& add(const std::string& id, const std::string& label, Member Fact::*member, const FieldHow& how = {}) {
        return bind(id, label, member, how, false);
    }
    template <class Member>
    FactForm& more(const std::string& id, const std::string& label, Member Fact::*member, const FieldHow& how = {}) {
        return bind(id, label, member, how, true);
    }
    // A field that is no member of the record; Finish reads it.
    FormField& extra(FormField field) { return form_.fields.emplace_back(std::move(field)); }

    template <class LineFact>
    FactForm& lines(LineForm<LineFact> line_form);

    FactForm& also_read(Reader reader) {
        readers_.push_back(std::move(reader));
        return *this;
    }

    // A first text of a new record, and where it comes from: "from your last".
    FactForm& guess(std::string_view id, std::string text, std::string origin) {
        FormField& field = form_.field(id);
        if (!is_new() || text.empty()) return *this;
        field.text = std::move(text);
        field.origin = std::move(origin);
        return *this;
    }

    FactForm& look(Look look) {
        look_ = std::move(look);
        return *this;
    }
    FactForm& look_at(LookAt look) {
        look_at_ = std::move(look);
        return *this;
    }

    Form done(Finish finish) &&;

private:
    // Where lines go once they are read; new ones get a key only when they are kept.
    struct Into {
        Kept& kept;
        bool keeping;
    };
    using LineReader = std::function<bool(Form&, Key<Fact>, const Writing&, Into)>;

    template <class Member>
    FactForm& bind(const std::string& id, const std::string& label, Member Fact::*member, const FieldHow& how,
                   bool more) {
        bindings_.push_back(form_detail::bind(id, member, how));
        // A member that says nothing yet shows nothing, though it has a value: no money, no day, no number.
        const bool blank = is_new() && fact_.*member == Member{};
        const std::string text = blank && !std::is_enum_v<Member> ? std::string{} : field_text(fact_.*member);
        form_.fields.push_back(form_detail::field_for(bindings_.back(), label, more, text));
        return *this;
    }

    const Writing& writing_;
    Fact fact_{};
    Form form_{};
    std::vector<form_detail::Binding<Fact>> bindings_{};
    std::vector<LineReader> line_readers_{};  // for each kind of line: reads the rows again
    std::vector<Reader> readers_{};
    Look look_{};
    LookAt look_at_{};
};

template <class Fact>
template <class LineFact>
FactForm<Fact>& FactForm<Fact>::lines(LineForm<LineFact> line_form) {
    FormLines shown{.id = line_form.id, .name = line_form.name, .fields = line_form.fields};
    if (form_.fact) {
        for (const LineFact& line : writing_.shop().template all<LineFact>()) {
            if (line.head != fact_.key) continue;
            std::vector<std::string> row(shown.fields.size());
            const auto put = [&](std::string_view id, const std::string& text) {
                for (std::size_t i = 0; i < shown.fields.size(); ++i)
                    if (shown.fields[i].id == id) row[i] = text;
            };
            for (const auto& binding : line_form.bindings) put(binding.id, binding.show(line));
            if (line_form.show_extra)
                for (const auto& [id, text] : line_form.show_extra(line)) put(id, text);
            shown.rows.push_back(std::move(row));
        }
    }
    form_.lines.push_back(std::move(shown));
    line_readers_.push_back(
        [line_form = std::move(line_form)](Form& form, Key<Fact> head, const Writing& writing, Into into) {
            FormLines& lines = form.lines_of(line_form.id);
            lines.notes.assign(lines.rows.size(), {});
            std::vector<LineFact> before;
            for (const LineFact& line : writing.shop().template all<LineFact>())
                if (line.head == head) before.push_back(line);
            bool fine = true;
            for (std::size_t row = 0; row < lines.rows.size(); ++row) {
                const FieldHow::Texts texts = [&](std::string_view id) -> const std::string& {
                    static const std::string kNothing;
                    for (std::size_t i = 0; i < lines.fields.size(); ++i)
                        if (lines.fields[i].id == id) return lines.rows[row][i];
                    return kNothing;
                };
                LineFact line{};
                if (row < before.size()) line = before[row];
                std::string trouble;
                for (const auto& binding : line_form.bindings) {
                    std::string understood;
                    const Reading reading = form_detail::reading_for(binding.how, texts, writing);
                    std::string wrong = binding.read(line, texts(binding.id), reading, understood);
                    if (trouble.empty()) trouble = std::move(wrong);
                }
                if (trouble.empty() && line_form.finish) trouble = line_form.finish(line, texts, writing, into.kept);
                if (!trouble.empty()) {
                    lines.notes[row] = std::move(trouble);
                    fine = false;
                    continue;
                }
                if (line_form.note) lines.notes[row] = line_form.note(line, texts, writing);
                line.head = head;
                line.position = static_cast<int>(row) + 1;
                if (line.key.number == 0 && into.keeping) line.key = writing.new_key<LineFact>();
                into.kept.change.put.template all<LineFact>().push_back(line);
            }
            for (std::size_t row = lines.rows.size(); row < before.size(); ++row)
                into.kept.change.remove(before[row].key);
            return fine;
        });
    return *this;
}

template <class Fact>
Form FactForm<Fact>::done(Finish finish) && {
    struct Parts {
        Fact fact;
        std::vector<form_detail::Binding<Fact>> bindings;
        std::vector<LineReader> line_readers;
        std::vector<Reader> readers;
        Look look;
        LookAt look_at;
        Finish finish;
    };
    const auto parts =
        std::make_shared<const Parts>(Parts{fact_, std::move(bindings_), std::move(line_readers_), std::move(readers_),
                                            std::move(look_), std::move(look_at_), std::move(finish)});

    // Reads all fields into `fact`; blanks that are needed are a trouble only when the form is kept.
    const auto read = [parts](Form& form, Fact& fact, const Writing& writing, bool keeping) {
        bool fine = true;
        for (FormField& field : form.fields) field.trouble.clear();
        const FieldHow::Texts texts = [&form](std::string_view id) -> const std::string& { return form.text(id); };
        for (const auto& binding : parts->bindings) {
            FormField& field = form.field(binding.id);
            field.understood.clear();
            const bool blank = trimmed(field.text).empty();
            const Reading reading = form_detail::reading_for(binding.how, texts, writing);
            std::string wrong = binding.read(fact, field.text, reading, field.understood);
            if (wrong.empty()) continue;
            fine = false;
            if (keeping || !blank) field.trouble = std::move(wrong);
        }
        return fine;
    };

    form_.look = [parts, read](Form& form, const Writing& writing) {
        Fact fact = parts->fact;
        read(form, fact, writing, false);
        Kept so_far;
        for (const auto& reader : parts->readers) reader(fact, form, writing, nullptr);
        for (const auto& line_reader : parts->line_readers) line_reader(form, fact.key, writing, Into{so_far, false});
        if (parts->look) parts->look(form, writing);
        if (parts->look_at) parts->look_at(fact, so_far.change, form, writing);
    };
    form_.keep = [parts, read](Form& form, const Writing& writing) -> std::optional<Kept> {
        Fact fact = parts->fact;
        Kept kept;
        bool fine = read(form, fact, writing, true);
        for (const auto& reader : parts->readers) fine = reader(fact, form, writing, &kept) && fine;
        if (fact.key.number == 0) fact.key = writing.new_key<Fact>();
        for (const auto& reader : parts->line_readers) fine = reader(form, fact.key, writing, Into{kept, true}) && fine;
        if (!fine) return std::nullopt;
        if (fact.code.empty())
            fact.code = free_code<Fact>(writing.shop(), std::string{Fact::kTable} + "-" + print(writing.day));
        if (!parts->finish(fact, form, writing, kept)) return std::nullopt;
        kept.change.put.template all<Fact>().push_back(std::move(fact));
        return kept;
    };
    form_.look(form_, writing_);
    return std::move(form_);
}

}  // namespace dyestead::gui
