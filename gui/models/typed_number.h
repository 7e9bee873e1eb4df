// typed_number.h - a number as somebody typed it into a field: a comma or a point for the decimals, never both.
#pragma once

#include <string>
#include <string_view>

#include "domain/text/decimal.h"

namespace dyestead::gui {

// Trouble not_a_number where two marks leave it open which one parts off the decimals: 1,234.5
Read<Decimal> read_typed(std::string_view text);

double as_double(Decimal decimal);

// So many places after the point, no more; for what stands in a field: 12.70 -> "12.70".
std::string to_places(double value, int places);

}  // namespace dyestead::gui
