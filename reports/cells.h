// cells.h - one figure of a table, as people read it and as it is.
#pragma once

#include <optional>
#include <string>

#include "reports/document.h"
#include "reports/words/shown.h"

namespace dyestead::reports {

// `shown` makes the text; without a value the cell says that it is not known.
template <class Shown>
Cell cell_of(std::optional<double> value, Shown shown) {
    if (!value) return {.shown = not_known(), .no_value = true};
    return {.shown = shown(*value), .number = *value};
}

// Money in a column or row whose heading names the currency.
inline Cell money_cell(std::optional<double> value, const std::string& currency) {
    return cell_of(value, [&](double units) { return bare_money(units, currency); });
}

inline Cell number_cell(std::optional<double> value) {
    return cell_of(value, shown_number);
}

// Where there is none: a vat that gave nothing has no cost of a gram.
Cell none_cell();

// Shows all numbers of a column with the places that suit its largest, so that the points stand in line.
void line_up(Table& table, std::size_t column);

}  // namespace dyestead::reports
