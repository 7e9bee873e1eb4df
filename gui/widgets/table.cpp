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
constexpr int kWordsOfAList = 130;  // of a name: the last columns are left out before it is cut shorter than this
constexpr int kLeastFigures = 60;
constexpr std::size_t kRowsMeasured = 200;

int line_width(const wxDC& canvas, const wxString& text) {
    int widest = 0;
    for (const wxString& line : wxSplit(text, '\n', '\0')) widest = std::max(widest, canvas.GetTextExtent(line).x);
    return widest;
}

// A heading wider than what stands under it goes over several lines, at the spaces that leave it narrowest, so that the
// room is left to words.
wxString broken(const wxDC& canvas, const wxString& heading, int room, std::size_t lines) {
    wxString best = heading;
    if (lines <= 1 || line_width(canvas, heading) <= room) return best;
    for (std::size_t at = heading.find(' '); at != wxString::npos; at = heading.find(' ', at + 1)) {
        const wxString tried = heading.substr(0, at) + "\n" + broken(canvas, heading.substr(at + 1), room, lines - 1);
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
    : Roomy(parent, wxID_ANY, wxDefaultPosition, wxDefaultSize, wxDV_ROW_LINES | wxBORDER_THEME),
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
    widths_ = {};
    fitted_ = 0;
    const auto& table = model_->table();
    wxClientDC canvas(this);
    for (unsigned i = 0; i < table.columns.size(); ++i) {
        int widest_cell = 0;
        bool codes = true;  // then what differs stands at the end
        canvas.SetFont(table.emphasise_last_row ? GetFont().Bold() : GetFont());
        for (std::size_t row = 0; row < std::min(table.rows.size(), kRowsMeasured); ++row) {
            if (i >= table.rows[row].size()) continue;
            codes = codes && table.rows[row][i].shown.find(' ') == std::string::npos;
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
            if (figures) {
                const int tightest = std::clamp(widest_cell, std::min(for_text(*this, kLeastFigures), width), width);
                return Width{lines, width, tightest, width, tightest};
            }
            const int words = std::clamp(for_text(*this, kLeastWords), least, width);
            return Width{lines, width, std::clamp(for_text(*this, kWordsOfAList), least, width), words, words};
        };
        for (std::size_t lines = 0; lines < widths_.size(); ++lines)
            widths_[lines].push_back(
                width_under(broken(canvas, heading, widest_cell - FromDIP(kAroundHeading), lines + 1)));
        int flags = wxDATAVIEW_COL_RESIZABLE;
        if (sorting_ == Sorting::by_heading) flags |= wxDATAVIEW_COL_SORTABLE;
        auto* column = AppendTextColumn(heading, i, wxDATAVIEW_CELL_INERT, widths_.front().back().natural,
                                        figures ? wxALIGN_RIGHT : wxALIGN_LEFT, flags);
        if (!figures) column->GetRenderer()->EnableEllipsize(codes ? wxELLIPSIZE_MIDDLE : wxELLIPSIZE_END);
    }
    align_heading_lines(*this);
    fit(GetSize().x);
}

int Table::wanted(const std::vector<Width>& widths) {
    return std::accumulate(
        widths.begin(), widths.end(), 0, [](int sum, const Width& each) { return sum + each.natural; });
}

int Table::full_width() const {
    return wanted(widths_[1]) + 2 * FromDIP(kAroundCell);
}

// Where the columns ask for more than there is, headings go over several lines first.
void Table::fit(int width) {
    const int there = width - FromDIP(kAroundCell);
    if (widths_.front().empty() || there < for_text(*this, kLeastWords) || there == fitted_)
        return;  // or not laid out yet
    fitted_ = there;
    std::size_t lines = 0;
    while (lines + 1 < widths_.size() && wanted(widths_[lines]) > there) ++lines;
    set_widths(widths_[lines], there);
}

// Of a list columns are left out before any is cut to nothing: the first and the last figure are seen, for the one says
// what a row is and the other what it comes to, and of the others those that can be read. Of the second a little is
// enough, for it is often half of a name.
std::vector<bool> Table::seen(std::vector<Width>& widths, int there) const {
    std::vector<bool> seen(widths.size(), sorting_ != Sorting::by_heading);
    if (sorting_ != Sorting::by_heading) return seen;
    int taken = 0;
    const auto take = [&](std::size_t column, int room) {
        seen[column] = true;
        taken += room;
        widths[column].least = std::max(widths[column].least, room);
    };
    const auto& columns = model_->table().columns;
    std::size_t figure = columns.size() - 1;
    while (figure > 0 && columns[figure].align != reports::Align::right) --figure;
    take(0, widths[0].readable);
    if (figure != 0) take(figure, widths[figure].readable);
    for (std::size_t i = 1; i < widths.size(); ++i) {
        if (seen[i]) continue;
        if (taken + widths[i].readable <= there) {
            take(i, widths[i].readable);
        } else if (i == 1 && taken + widths[i].tightest <= there) {
            take(i, widths[i].tightest);
        }
    }
    return seen;
}

// What is still too much the columns of words give, the widest most, and then the headings of figures.
void Table::set_widths(std::vector<Width> widths, int there) {
    const std::vector<bool> shown_here = seen(widths, there);
    int wanted = 0;
    int words = 0;
    int headings = 0;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        if (!shown_here[i]) continue;
        wanted += widths[i].natural;
        words += widths[i].natural - widths[i].least;
        headings += widths[i].least - widths[i].tightest;
    }
    const int of_words = std::clamp(wanted - there, 0, words);
    const int of_headings = std::clamp(wanted - there - of_words, 0, headings);
    const auto columns = static_cast<int>(std::ranges::count(shown_here, true));
    const int over = std::max(0, there - wanted) / std::max(1, columns);  // each gets the same of what is over
    const auto share = [](int part, int whole, int all_of_it) { return whole == 0 ? 0 : part * all_of_it / whole; };
    for (unsigned i = 0; i < widths.size() && i < GetColumnCount(); ++i) {
        const Width& each = widths[i];
        GetColumn(i)->SetHidden(!shown_here[i]);
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
