#include "gui/widgets/table.h"

#include <wx/dcclient.h>
#include <algorithm>

#include "gui/desktop/desktop.h"
#include "gui/guarded.h"
#include "gui/widgets/table_model.h"
#include "gui/widgets/text.h"

namespace dyestead::gui {

namespace {

// What GTK puts around the text of a cell and of a heading, and the arrow of the column that is sorted by.
constexpr int kAroundCell = 12;
constexpr int kAroundHeading = 24;
constexpr int kLeastWords = 110;
constexpr int kLeastFigures = 60;
constexpr std::size_t kRowsMeasured = 200;

bool same_headings(const std::vector<reports::Column>& one, const std::vector<reports::Column>& other) {
    return std::ranges::equal(
        one, other, [](const auto& a, const auto& b) { return a.heading == b.heading && a.align == b.align; });
}

}  // namespace

Table::Table(wxWindow* parent, const std::string& accessible_name, Sorting sorting)
    : wxDataViewCtrl(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxDV_ROW_LINES | wxBORDER_THEME),
      model_{new TableModel},
      sorting_{sorting} {
    AssociateModel(model_.get());
    set_accessible_name(*this, accessible_name);
    switch_off_type_ahead(*this);
    Bind(wxEVT_DATAVIEW_COLUMN_SORTED,
         [this](wxDataViewEvent& event) { guarded("sorting a table", [&] { sort_by(event); }); });
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        guarded("fitting columns", [&] { fit(event.GetSize().x); });
    });
    Bind(wxEVT_DATAVIEW_SELECTION_CHANGED, [this](wxDataViewEvent&) {
        guarded("selecting a row", [&] {
            if (on_select) on_select();
        });
    });
}

void Table::show(reports::Table table) {
    const auto kept = selected();
    const bool new_columns = GetColumnCount() == 0 || !same_headings(table.columns, model_->table().columns);
    model_->show(std::move(table));
    if (new_columns) set_columns();
    if (const auto* by = GetSortingColumn()) model_->sort_by(by->GetModelColumn(), by->IsSortOrderAscending());
    if (kept && *kept < model_->rows()) Select(model_->GetItem(model_->shown_row_of(*kept)));
}

// Widths are measured here: a column that sizes itself asks for every cell of the table.
void Table::set_columns() {
    ClearColumns();
    widths_.clear();
    fitted_ = 0;
    const auto& table = model_->table();
    const int around = FromDIP(kAroundHeading);
    wxClientDC canvas(this);
    for (unsigned i = 0; i < table.columns.size(); ++i) {
        canvas.SetFont(GetFont().Bold());  // as the theme may draw headings
        const int least = canvas.GetTextExtent(shown(table.columns[i].heading)).x + around;
        int width = least;
        int widest_cell = 0;
        if (!table.emphasise_last_row) canvas.SetFont(GetFont());
        for (std::size_t row = 0; row < std::min(table.rows.size(), kRowsMeasured); ++row) {
            if (i >= table.rows[row].size()) continue;
            const int cell = canvas.GetTextExtent(shown(table.rows[row][i].shown)).x;
            widest_cell = std::max(widest_cell, cell + FromDIP(kAroundCell));
        }
        width = std::max(width, widest_cell);
        const auto align = table.columns[i].align == reports::Align::right ? wxALIGN_RIGHT : wxALIGN_LEFT;
        int flags = wxDATAVIEW_COL_RESIZABLE;
        if (sorting_ == Sorting::by_heading) flags |= wxDATAVIEW_COL_SORTABLE;
        AppendTextColumn(shown(table.columns[i].heading), i, wxDATAVIEW_CELL_INERT, width, align, flags);
        // Words may be cut short where it is narrow, and headings of figures where it is narrower still; figures never.
        const int words = std::clamp(FromDIP(kLeastWords), least, width);
        if (align == wxALIGN_LEFT)
            widths_.push_back({width, words, words});
        else
            widths_.push_back({width, width, std::clamp(widest_cell, std::min(FromDIP(kLeastFigures), width), width)});
    }
    fit(GetSize().x);
}

// Where the columns ask for more than there is, those of words give way, the widest most.
void Table::fit(int width) {
    const int there = width - FromDIP(kAroundCell);
    if (widths_.empty() || there <= 0 || there == fitted_) return;
    fitted_ = there;
    int wanted = 0;
    int words = 0;
    int headings = 0;
    for (const Width& each : widths_) {
        wanted += each.natural;
        words += each.natural - each.least;
        headings += each.least - each.tightest;
    }
    const int of_words = std::clamp(wanted - there, 0, words);
    const int of_headings = std::clamp(wanted - there - of_words, 0, headings);
    const auto share = [](int part, int whole, int over) { return whole == 0 ? 0 : part * over / whole; };
    for (unsigned i = 0; i < widths_.size() && i < GetColumnCount(); ++i) {
        const Width& each = widths_[i];
        GetColumn(i)->SetWidth(each.natural - share(each.natural - each.least, words, of_words) -
                               share(each.least - each.tightest, headings, of_headings));
    }
    share_width(*this, wanted < there);
}

std::optional<std::size_t> Table::selected() const {
    const wxDataViewItem item = GetSelection();
    if (!item.IsOk()) return std::nullopt;
    const unsigned row = model_->GetRow(item);
    if (row >= model_->rows()) return std::nullopt;
    return model_->row_at(row);
}

void Table::select(std::size_t row) {
    if (row >= model_->rows()) return;
    Select(model_->GetItem(model_->shown_row_of(row)));
    if (on_select) on_select();
}

void Table::sort_by(wxDataViewEvent& event) {
    const auto kept = selected();
    const auto* column = GetSortingColumn();
    if (column == nullptr) return;
    model_->sort_by(column->GetModelColumn(), column->IsSortOrderAscending());
    if (kept) Select(model_->GetItem(model_->shown_row_of(*kept)));
    event.Skip();
}

int Table::full_height() const {
    constexpr int kRow = 23;  // GTK tells no row's height before it has been drawn
    const int row = std::max(FromDIP(kRow), GetCharHeight() + FromDIP(6));
    return row * static_cast<int>(model_->rows() + 1) + FromDIP(10);
}

}  // namespace dyestead::gui
