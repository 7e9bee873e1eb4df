#include "gui/widgets/table_model.h"

#include <algorithm>
#include <numeric>

#include "gui/widgets/text.h"

namespace dyestead::gui {

namespace {

const reports::Cell& cell(const reports::Table& table, std::size_t row, unsigned column) {
    static const reports::Cell none{};
    const auto& cells = table.rows[row];
    return column < cells.size() ? cells[column] : none;
}

bool before(const reports::Cell& one, const reports::Cell& other) {
    if (one.number && other.number) return *one.number < *other.number;
    if (one.number.has_value() != other.number.has_value()) return other.number.has_value();
    return one.shown < other.shown;
}

}  // namespace

void TableModel::show(reports::Table table) {
    table_ = std::move(table);
    order_.resize(table_.rows.size());
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    Reset(rows());
}

void TableModel::sort_by(unsigned column, bool ascending) {
    const auto total = order_.end() - (table_.emphasise_last_row && !order_.empty() ? 1 : 0);
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::stable_sort(order_.begin(), total, [&](std::size_t one, std::size_t other) {
        const auto& a = cell(table_, one, column);
        const auto& b = cell(table_, other, column);
        return ascending ? before(a, b) : before(b, a);
    });
    Reset(rows());
}

unsigned TableModel::shown_row_of(std::size_t row) const {
    return static_cast<unsigned>(std::ranges::find(order_, row) - order_.begin());
}

void TableModel::GetValueByRow(wxVariant& value, unsigned row, unsigned column) const {
    // GTK may still ask for a row that has just gone.
    value = row < order_.size() ? shown(cell(table_, order_[row], column).shown) : wxString{};
}

bool TableModel::GetAttrByRow(unsigned row, unsigned /*column*/, wxDataViewItemAttr& attributes) const {
    const bool total = table_.emphasise_last_row && row + 1 == order_.size();
    attributes.SetBold(total);
    return total;
}

bool TableModel::SetValueByRow(const wxVariant& /*value*/, unsigned /*row*/, unsigned /*column*/) {
    return false;
}

}  // namespace dyestead::gui
