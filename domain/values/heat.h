// heat.h - how much energy must be bought to warm so much water?
#pragma once

#include "domain/values/quantity.h"
#include "domain/values/ratio.h"
#include "domain/values/reading.h"

namespace dyestead {

// Watt-hours: kilograms * 4.186 kJ/(kg K) * rise / 3.6 kJ/Wh / efficiency, rounded half away from
// zero; none when the water does not grow warmer. A litre of water counts as a kilogram. `efficiency`
// is the share of the bought energy that reaches the water (a ring 0.8 to 0.9, a gas hob 0.4 to 0.5).
// Specific heat of water 4.186 J/(g K) and the efficiencies: from memory.
// Requires: efficiency > 0. Throws: KindsMixed unless the water is a mass or a volume; Overflow.
constexpr Quantity energy_to_heat(Quantity water, Temperature from, Temperature to, Ratio efficiency) {
    if (water.kind() != Kind::mass && water.kind() != Kind::volume) throw KindsMixed{};
    if (to <= from) return Quantity::watt_hours(0);
    // One base unit is a millionth of a kilogram, one tenth a tenth of a kelvin:
    // 4.186 / (1'000'000 * 10 * 3.6) = 2093 / 18'000'000'000.
    const Wide work = static_cast<Wide>(water.in_base()) * (std::int64_t{to.tenths} - from.tenths) * 2'093;
    const Wide bought = static_cast<Wide>(efficiency.top) * 18'000'000'000;
    return Quantity::watt_hours(scaled(work, efficiency.bottom, bought));
}

static_assert(energy_to_heat(Quantity::microlitres(10'000'000), {150}, {750}, {9, 10}).in_base() == 775);

}  // namespace dyestead
