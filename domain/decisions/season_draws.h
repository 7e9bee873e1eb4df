// season_draws.h - what would a season bring, and how would many seasons like those on record come out?
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "domain/decisions/doubt.h"
#include "domain/decisions/vat_spread.h"

namespace dyestead {

// A season as one sum: all its vats together.
struct Season {
    double yield = 0;        // g a kilo, of the vats that gave powder
    double time_factor = 1;  // minutes at the vats, over those usual
    double strength = 1;
    double failed_vats = 0;
    bool crop_lost = false;
};

struct SeasonSums {
    double bars = 0;
    Difference bought;  // home less bought-in, the whole season
    Difference plain;   // home less plain
    double cash = 0;    // spent on colour
    double minutes = 0;
};

// `vats`: in the season.
SeasonSums season_sums(const DoubtInput& input, int vats, const Season& season);

struct DrawnSeason {
    Season season;
    SeasonSums sums;
};

// Shows `read` one season after the other; the same draws every time.
void draw_seasons(const DoubtInput& input, const VatSpread& spread, int vats, int draws,
                  const std::function<void(const DrawnSeason&)>& read);
std::vector<DrawnSeason> draw_seasons(const DoubtInput& input, const VatSpread& spread, int vats, int draws);

}  // namespace dyestead
