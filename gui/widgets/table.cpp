#include "gui/widgets/table.h"

#include <wx/dcclient.h>
#include <algorithm>
#include <numeric>

#include "gui/desktop/desktop.h"
#include "gui/guarded.h"
#include "gui/widgets/table_model.h"
#include "gui/widgets/text.h"
#include "gui/widgets/text_scale.h"

namespace dyestead::gui {

namespace {

// What GTK puts around the text of a cell and of a heading, and the arrow of the column that is sorted by.
constexpr int kAroundCell = 12;
constexpr int kAroundHeading = 24;
constexpr int kLeastWords = 100;
constexpr int kLeastFigures = 60;
constexpr std::size_t kRowsMeasured = 200;

int line_width(const wxDC& canvas, const wxString& text) {
    int widest = 0;
    for (const wxString& line : wxSplit(text, '\n', '\0')) widest = std::max(widest, canvas.GetTextExtent(line).x);
    return widest;
}

// A heading wider than what stands under it goes over two lines, at the space that leaves it narrowest, so that the
// room is left to words.
wxString broken(const wxDC& canvas, const wxString& heading, int room) {
    wxString best = heading;
    if (line_width(canvas, heading) <= room) return best;
    for (std::size_t at = heading.find(' '); at != wxString::npos; at = heading.find(' ', at + 1)) {
        const wxString tried = heading.substr(0, at) + "\n" + heading.substr(at + 1);
        if (line_width(canvas, tried) < line_width(canvas, best)) best = tried;
    }
    return best;
}

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
        // Afterwards: GTK forgets a width given while it is laying out.
        CallAfter([this] { guarded("fitting columns", [&] { fit(GetSize().x); }); });
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
    in_one_line_.clear();
    in_two_lines_.clear();
    fitted_ = 0;
    const auto& table = model_->table();
    wxClientDC canvas(this);
    for (unsigned i = 0; i < table.columns.size(); ++i) {
        int widest_cell = 0;
        canvas.SetFont(table.emphasise_last_row ? GetFont().Bold() : GetFont());
        for (std::size_t row = 0; row < std::min(table.rows.size(), kRowsMeasured); ++row) {
            if (i >= table.rows[row].size()) continue;
            const int cell = canvas.GetTextExtent(shown(table.rows[row][i].shown)).x;
            widest_cell = std::max(widest_cell, cell + FromDIP(kAroundCell));
        }
        canvas.SetFont(GetFont().Bold());  // as the theme may draw headings
        const wxString heading = shown(table.columns[i].heading);
        const bool figures = table.columns[i].align == reports::Align::right;
        const auto width_under = [&](const wxString& lines) {
            const int least = line_width(canvas, lines) + FromDIP(kAroundHeading);
            const int width = std::max(least, widest_cell);
            // Words may be cut short where it is narrow, and headings of figures where it is narrower still; figures
            // never.
            if (figures)
                return Width{lines, width, width,
                             std::clamp(widest_cell, std::min(for_text(*this, kLeastFigures), width), width)};
            const int words = std::clamp(for_text(*this, kLeastWords), least, width);
            return Width{lines, width, words, words};
        };
        in_one_line_.push_back(width_under(heading));
        in_two_lines_.push_back(width_under(broken(canvas, heading, widest_cell - FromDIP(kAroundHeading))));
        int flags = wxDATAVIEW_COL_RESIZABLE;
        if (sorting_ == Sorting::by_heading) flags |= wxDATAVIEW_COL_SORTABLE;
        AppendTextColumn(heading, i, wxDATAVIEW_CELL_INERT, in_one_line_.back().natural,
                         figures ? wxALIGN_RIGHT : wxALIGN_LEFT, flags);
    }
    align_heading_lines(*this);
    fit(GetSize().x);
}

// Where the columns ask for more than there is, headings go over two lines first.
void Table::fit(int width) {
    const int there = width - FromDIP(kAroundCell);
    if (in_one_line_.empty() || there < for_text(*this, kLeastWords) || there == fitted_)
        return;  // or not laid out yet
    fitted_ = there;
    int wanted = 0;
    for (const Width& each : in_one_line_) wanted += each.natural;
    set_widths(wanted <= there ? in_one_line_ : in_two_lines_, there);
}

int Table::tightest_sum(const std::vector<Width>& widths) {
    return std::accumulate(
        widths.begin(), widths.end(), 0, [](int sum, const Width& each) { return sum + each.tightest; });
}

// Then the columns of words give way, the widest most; in a list the last columns are left out before any is cut to
// nothing.
void Table::set_widths(const std::vector<Width>& all, int there) {
    std::vector<Width> widths = all;
    if (sorting_ == Sorting::by_heading)
        while (widths.size() > 1 && tightest_sum(widths) > there) widths.pop_back();
    for (unsigned i = 0; i < GetColumnCount(); ++i) GetColumn(i)->SetHidden(i >= widths.size());
    int wanted = 0;
    int words = 0;
    int headings = 0;
    for (const Width& each : widths) {
        wanted += each.natural;
        words += each.natural - each.least;
        headings += each.least - each.tightest;
    }
    const int of_words = std::clamp(wanted - there, 0, words);
    const int of_headings = std::clamp(wanted - there - of_words, 0, headings);
    const int over =
        std::max(0, there - wanted) / static_cast<int>(widths.size());  // each gets the same of what is over
    const auto share = [](int part, int whole, int all_of_it) { return whole == 0 ? 0 : part * all_of_it / whole; };
    for (unsigned i = 0; i < widths.size() && i < GetColumnCount(); ++i) {
        const Width& each = widths[i];
        if (GetColumn(i)->GetTitle() != each.heading) GetColumn(i)->SetTitle(each.heading);
        GetColumn(i)->SetWidth(each.natural + over - share(each.natural - each.least, words, of_words) -
                               share(each.least - each.tightest, headings, of_headings));
    }
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
