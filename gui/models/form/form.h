// form.h - a form half filled in: which fields it has, what stands in them, what was understood, and what keeping it
// will do. No window in here: gui/widgets/form_panel shows any Form, a test fills one in and keeps it.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "domain/facts/change.h"
#include "domain/ledger/finding.h"
#include "domain/text/trouble.h"
#include "gui/models/writing.h"

namespace dyestead::gui {

// How a field is filled in. `name`: one of the choices, or a new name typed over them.
enum class Entry : std::uint8_t { line, choice, name, tick };

struct Choice {
    std::string code;  // what `text` holds when it is chosen: the key of a fact, or an enumeration's word
    std::string shown;
};

inline constexpr std::string_view kYes = "yes";

struct FormField {
    std::string id;     // "amount": for drafts, tests and `Form::field`
    std::string label;  // with the letter for Alt: "How &much"
    Entry entry = Entry::line;
    bool more = false;     // behind "More, if you know it"
    std::string text{};    // as typed; of a choice its code, of a new name the name; of a tick kYes or blank
    std::string origin{};  // where a guess comes from: "from your last". Typing over it makes it the maker's own
    std::string help{};    // what the field is for, one or two sentences
    std::vector<Choice> choices{};
    std::string understood{};  // what was read from the text, said back
    std::string trouble{};     // why it cannot be kept so
};

// Lines of one kind below a head: what came with a delivery, what went into a batch.
struct FormLines {
    std::string id;
    std::string name;                              // "What came"
    std::vector<FormField> fields;                 // of the line being written, and its columns
    std::vector<std::vector<std::string>> rows{};  // the texts of the lines there are
    std::vector<std::string> notes{};              // of each row: what it was understood as, or what is wrong
};

// What keeping a form does to the books.
struct Kept {
    Change change;
    std::string title;  // an English sentence with {names}, for say(): "cut of {amount} from {bed}"
    std::vector<TroubleArg> args{};
    // What the entry means, once it is in the books: "About 2.2 kg. Vat it today: leaf loses dye by the hour."
    std::function<std::string(const Writing& after)> consequence{};
};

struct Form {
    std::string code;               // which form it is, for drafts: "harvest"
    std::string title;              // "A cut"
    std::optional<FactRef> fact{};  // the record that is being corrected; none: a new one
    std::vector<FormField> fields{};
    std::vector<FormLines> lines{};
    std::vector<std::string> cautions{};
    std::string summary{};     // what it comes to so far: "45.60 goods and 6.90 postage: 52.50"
    std::string keep_label{};  // blank: "Keep it"

    // Reads every field again after something was typed: understood, trouble of what is filled in, guesses, summary.
    std::function<void(Form&, const Writing&)> look{};
    // Nothing when something cannot be kept so; then `trouble` stands at the fields concerned, blanks included.
    std::function<std::optional<Kept>(Form&, const Writing&)> keep{};

    FormField& field(std::string_view id);
    const FormField& field(std::string_view id) const;
    const std::string& text(std::string_view id) const { return field(id).text; }
    FormLines& lines_of(std::string_view id);
    // As if typed, then looked at. For tests, drafts and the window alike.
    void type(std::string_view id, std::string text, const Writing& writing);
    bool has_trouble() const;

    // All that stands in the fields and lines, and back: a draft. What the form no longer has is left out.
    std::vector<std::pair<std::string, std::string>> texts() const;
    void put_texts(const std::vector<std::pair<std::string, std::string>>& texts, const Writing& writing);
    // Which draft it is: its code, and of a correction the record's key.
    std::string draft_code() const;
};

// The label without its letter for Alt.
std::string plain_label(std::string_view label);

}  // namespace dyestead::gui
