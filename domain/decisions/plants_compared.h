// plants_compared.h - which of the colours grown is worth most: by the hour, by the bed, by the gram of equal shade?
//
// Each by its own verdict over the same months, looking back. Bed and season: every calendar year of those months in
// which a planting stood counts its area once.
#pragma once

#include <optional>
#include <vector>

#include "domain/decisions/verdict.h"

namespace dyestead {

struct PlantCompared {
    Key<Colour> colour{};
    RulingWord word{};
    double dye_hours = 0;
    double square_metre_seasons = 0;
    std::optional<double> earned_per_hour;   // by an extra dye hour
    std::optional<double> season_cash;       // home less bought, before own time
    std::optional<double> per_square_metre;  // of it, a season
    std::optional<double> per_shade_gram;    // full cost of what gives one gram's shade of the standard
    std::optional<double> bought_per_shade_gram;
    double strength = 1;
};

// Colours with a vat on record; the best by the hour first, those nothing can be said of last.
std::vector<PlantCompared> plants_compared(const Shop& shop, const Ledger& ledger, int months = kVerdictMonths);

}  // namespace dyestead
