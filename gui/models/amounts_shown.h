// amounts_shown.h - the cells of lists: what is shown, and the number it is sorted by.
#pragma once

#include <string>

#include "domain/facts/material_amount.h"
#include "domain/values/date.h"
#include "reports/document.h"

namespace dyestead::gui {

reports::Cell words_cell(std::string text);
reports::Cell money_cell(double units, const std::string& currency);  // without the currency: it is in the heading
reports::Cell held_cell(const Material& material, std::int64_t base);
reports::Cell day_cell(Day day);
reports::Cell count_cell(std::size_t count);
reports::Cell number_cell(double value, std::string shown);
// Where there is no value: said as a dash, sorted before all values.
reports::Cell no_cell();

// The amount prices of this material are told by: a gram of powder, seed or scent, else a kilo, litre or piece, in base
// units.
std::int64_t price_unit(const Material& material);
// "7.10 a kg"; a dash where nothing is there.
reports::Cell price_cell(const Material& material, Money cost, std::int64_t base, const std::string& currency);

}  // namespace dyestead::gui
