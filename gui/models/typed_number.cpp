#include "gui/models/typed_number.h"
#include "reports/words/language.h"

#include <fmt/format.h>

#include <algorithm>

namespace dyestead::gui {

Read<Decimal> read_typed(std::string_view text) {
    const auto commas = std::ranges::count(text, ',');
    if (commas == 0) return read_decimal(text);
    if (commas > 1 || text.find('.') != std::string_view::npos) return TroubleId::not_a_number;
    std::string pointed{text};
    std::ranges::replace(pointed, ',', '.');
    return read_decimal(pointed);
}

double as_double(Decimal decimal) {
    return static_cast<double>(decimal.digits) / static_cast<double>(power_of_ten(decimal.places));
}

std::string to_places(double value, int places) {
    return reports::in_marks_here(fmt::format("{:.{}f}", value, places));
}

}  // namespace dyestead::gui
