// decimal.h - reads and prints decimal numbers without floating point and without the locale.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "domain/text/trouble.h"
#include "domain/values/share.h"

namespace dyestead {

// digits / 10^places
struct Decimal {
    std::int64_t digits = 0;
    int places = 0;
};

std::int64_t power_of_ten(int exponent);

// One decimal mark, a point. At most 18 digits. A sign may stand before them.
Read<Decimal> read_decimal(std::string_view text);

// The fewest places, up to `most`, at which value = base * bottom / top, read back and rounded half
// away from zero, gives `base` again. Requires: top, bottom > 0.
std::string shortest_decimal(std::int64_t base, std::int64_t top, std::int64_t bottom, int most = 9);

std::string print_decimal(Decimal decimal);

std::string_view trimmed(std::string_view text);

}  // namespace dyestead
