#include "gui/widgets/lines_part.h"

#include <wx/button.h>
#include <wx/sizer.h>
#include <algorithm>

#include "gui/guarded.h"
#include "gui/widgets/paddings.h"
#include "gui/widgets/table.h"
#include "gui/widgets/text.h"
#include "gui/widgets/wrapped_text.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

namespace {

constexpr int kListHeight = 120;
constexpr std::size_t kInOneColumn = 3;  // more fields than these stand in two columns

// A choice shows its words, not its code.
std::string shown_text(const FormField& field, const std::string& text) {
    const auto found = std::ranges::find(field.choices, text, &Choice::code);
    return found == field.choices.end() ? text : found->shown;
}

reports::Table table_of(const FormLines& lines) {
    reports::Table table{.title = lines.name};
    for (const FormField& field : lines.fields) table.columns.push_back({plain_label(field.label)});
    table.columns.push_back({say("what it comes to")});
    for (std::size_t row = 0; row < lines.rows.size(); ++row) {
        std::vector<reports::Cell> cells;
        for (std::size_t i = 0; i < lines.fields.size(); ++i)
            cells.push_back({.shown = shown_text(lines.fields[i], lines.rows[row][i])});
        cells.push_back({.shown = row < lines.notes.size() ? lines.notes[row] : std::string{}});
        table.rows.push_back(std::move(cells));
    }
    return table;
}

}  // namespace

LinesPart::LinesPart(wxWindow* parent, wxSizer& column, const FormLines& lines) : parent_{parent}, lines_{lines} {
    auto* name = new WrappedText(parent, TextSize::plain);
    name->SetFont(name->GetFont().Bold());
    name->say(lines.name);
    column.Add(name, wxSizerFlags{}.Expand().Border(wxTOP | wxBOTTOM, parent->FromDIP(kNear)));
    list_ = new Table(parent, lines.name, Sorting::as_given);
    list_->SetMinSize(parent->FromDIP(wxSize{-1, kListHeight}));
    column.Add(list_, wxSizerFlags{}.Expand().Border(wxBOTTOM, parent->FromDIP(kNear)));
    told_ = new WrappedText(parent, TextSize::plain);
    column.Add(told_, wxSizerFlags{}.Expand());
    auto* grids = new wxBoxSizer(wxHORIZONTAL);
    const std::size_t in_one =
        lines.fields.size() <= kInOneColumn ? lines.fields.size() : (lines.fields.size() + 1) / 2;
    for (std::size_t first = 0; first < lines.fields.size(); first += in_one) {
        auto* grid = new wxFlexGridSizer(2, wxSize{0, parent->FromDIP(2)});
        grid->AddGrowableCol(1);
        for (std::size_t i = first; i < std::min(first + in_one, lines.fields.size()); ++i)
            fields_.push_back(std::make_unique<FieldRow>(parent, *grid, lines.fields[i], false));
        grids->Add(grid, wxSizerFlags{1}.Top().Border(wxRIGHT, first == 0 ? parent->FromDIP(kNear) : 0));
    }
    for (std::size_t i = 0; i < fields_.size(); ++i) {
        fields_[i]->on_enter = [this, i] {
            // In a line that was there already Enter is enough: the rest of it stands.
            if (!chosen_ && i + 1 < fields_.size()) return fields_[i + 1]->focus();
            put_line();
        };
    }
    column.Add(grids, wxSizerFlags{}.Expand());
    put_ = new wxButton(parent, wxID_ANY, shown(say("Add this line")));
    take_ = new wxButton(parent, wxID_ANY, shown(say("Take the line away")));
    put_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { guarded("adding a line", [this] { put_line(); }); });
    take_->Bind(wxEVT_BUTTON, [this](wxCommandEvent&) { guarded("taking a line away", [this] { take_away(); }); });
    list_->on_select = [this] {
        if (const auto row = list_->selected()) choose(*row);
    };
    auto* buttons = new wxBoxSizer(wxHORIZONTAL);
    buttons->Add(put_, wxSizerFlags{}.Border(wxRIGHT, parent->FromDIP(kNear)));
    buttons->Add(take_, wxSizerFlags{});
    column.Add(buttons, wxSizerFlags{}.Border(wxBOTTOM, parent->FromDIP(kNear)));
    take_->Disable();
    show(lines);
}

wxWindow* LinesPart::list() const {
    return list_;
}

void LinesPart::show(const FormLines& lines) {
    lines_ = lines;
    list_->show(table_of(lines_));
    tell();
}

// What is said of the line in hand, or of the last one: whole, where its column has no room for it.
void LinesPart::tell() {
    const std::size_t row = chosen_.value_or(lines_.rows.empty() ? 0 : lines_.rows.size() - 1);
    told_->say(row < lines_.notes.size() ? lines_.notes[row] : std::string{});
    parent_->Layout();
}

std::vector<std::string> LinesPart::typed_line() const {
    std::vector<std::string> line;
    for (const auto& field : fields_) line.push_back(field->text());
    return line;
}

void LinesPart::add_what_is_typed() {
    const auto line = typed_line();
    bool anything = false;
    for (std::size_t i = 0; i < line.size(); ++i) anything = anything || line[i] != lines_.fields[i].text;
    if (anything) put_line();
}

void LinesPart::put_line() {
    auto rows = lines_.rows;
    if (chosen_ && *chosen_ < rows.size()) {
        rows[*chosen_] = typed_line();
    } else {
        rows.push_back(typed_line());
    }
    // Down a list that was there already, line by line; a new line makes room for the next new one.
    const auto next = chosen_ && *chosen_ + 1 < rows.size() ? std::optional{*chosen_ + 1} : std::nullopt;
    const std::size_t at = next ? field_of_focus() : 0;
    clear();
    if (on_change) on_change(std::move(rows));
    if (next) list_->select(*next);
    fields_[at]->focus();
}

std::size_t LinesPart::field_of_focus() const {
    for (std::size_t i = 0; i < fields_.size(); ++i)
        if (fields_[i]->control()->HasFocus()) return i;
    return fields_.size() > 1 ? 1 : 0;
}

void LinesPart::take_away() {
    if (!chosen_ || *chosen_ >= lines_.rows.size()) return;
    auto rows = lines_.rows;
    rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(*chosen_));
    clear();
    if (on_change) on_change(std::move(rows));
    fields_.front()->focus();
}

void LinesPart::choose(std::size_t row) {
    if (row >= lines_.rows.size()) return;
    chosen_ = row;
    for (std::size_t i = 0; i < fields_.size(); ++i) {
        FormField field = lines_.fields[i];
        field.text = lines_.rows[row][i];
        fields_[i]->put(field);
    }
    tell();
    put_->SetLabel(shown(say("Change this line")));
    take_->Enable();
    parent_->Layout();
}

void LinesPart::clear() {
    chosen_.reset();
    list_->UnselectAll();
    for (std::size_t i = 0; i < fields_.size(); ++i) fields_[i]->put(lines_.fields[i]);
    put_->SetLabel(shown(say("Add this line")));
    take_->Disable();
    parent_->Layout();
}

}  // namespace dyestead::gui
