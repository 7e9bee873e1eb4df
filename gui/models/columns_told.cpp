#include "gui/models/columns_told.h"

#include <algorithm>

namespace dyestead::gui {

reports::Table columns_told(reports::Table table) {
    if (table.rows.empty()) return table;
    for (std::size_t column = table.columns.size(); column > 1; --column) {
        const std::size_t at = column - 1;
        const auto has_none = [&](const std::vector<reports::Cell>& row) {
            return at >= row.size() || row[at].no_value || row[at].shown.empty();
        };
        if (!std::ranges::all_of(table.rows, has_none)) continue;
        table.columns.erase(table.columns.begin() + static_cast<std::ptrdiff_t>(at));
        for (auto& row : table.rows)
            if (at < row.size()) row.erase(row.begin() + static_cast<std::ptrdiff_t>(at));
    }
    return table;
}

}  // namespace dyestead::gui
