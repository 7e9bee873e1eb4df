// seasons.h - how did each year on record come out? A season is the year its harvest was cut in.
#pragma once

#include "domain/decisions/figures.h"

namespace dyestead {

// Oldest first. A season without powder has no difference: it was the worst there can be.
// What plantings closed, leaf spoiled and bills came to falls to the calendar year it happened in.
std::vector<SeasonRow> seasons(const Records& records, const Gathered& gathered, const std::vector<FinishedVat>& vats,
                               double strength);

// The worst and the best season by the difference at the hurdle with today's premium.
// Requires: not empty.
AtHurdle worst(const std::vector<SeasonRow>& seasons);
AtHurdle best(const std::vector<SeasonRow>& seasons);

}  // namespace dyestead
