#include "reports/cells.h"

#include <algorithm>
#include <cmath>

#include "reports/words/say.h"

namespace dyestead::reports {

Cell none_cell() {
    return {.shown = tr("none"), .no_value = true};
}

void line_up(Table& table, std::size_t column) {
    double largest = 0;
    for (const auto& row : table.rows)
        if (row[column].number) largest = std::max(largest, std::abs(*row[column].number));
    const int places = std::min(places_for(largest), 2);
    for (auto& row : table.rows)
        if (row[column].number) row[column].shown = shown_fixed(*row[column].number, places);
}

}  // namespace dyestead::reports
