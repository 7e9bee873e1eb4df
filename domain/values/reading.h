// reading.h - what a thermometer or a pH strip showed at the vat.
#pragma once

#include <compare>
#include <cstdint>

namespace dyestead {

struct Temperature {
    std::int32_t tenths = 0;  // of a degree Celsius
    friend constexpr auto operator<=>(Temperature, Temperature) = default;
};

struct Acidity {
    std::int32_t hundredths = 0;  // of a pH unit
    friend constexpr auto operator<=>(Acidity, Acidity) = default;
};

}  // namespace dyestead
