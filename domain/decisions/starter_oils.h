// starter_oils.h - what is published of an oil before the supplier's own word is at hand: its saponification value as a
// range, and its density.
//
// Each row's source stands beside it in starter_oils.cpp. A range is for the kind of oil, never for the tub in hand:
// lye worked out from its lowest value leaves the most oil over, so that is the one to begin with. The supplier's own
// value wins.
#pragma once

#include <optional>
#include <string_view>

#include "domain/values/ratio.h"

namespace dyestead {

struct StarterOil {
    std::string_view called;     // part of the name, in small letters
    int saponification_low = 0;  // mg KOH per g
    int saponification_high = 0;
    int density_low = 0;  // mg per ml; 0: none given
    int density_high = 0;
    int degrees = 0;  // Celsius, of the density
    std::string_view source;
};

// Of an oil of that name ("Coconut oil, 76 degrees"); nothing where nothing is published here.
std::optional<StarterOil> starter_oil(std::string_view name);

// The middle of the published densities, g per ml; nothing where none is given.
std::optional<Ratio> usual_density(const StarterOil& oil);

}  // namespace dyestead
