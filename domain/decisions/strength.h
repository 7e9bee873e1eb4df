// strength.h - how strong is home pigment against the colour's standard, which is its bought-in match?
//
// The strength of a lot is in its newest shade test against the standard. That of several is
// sum(g * s) / sum(g) over the tested ones. Under half the grams tested, the colour is untested.
#pragma once

#include "domain/decisions/pigment_pool.h"

namespace dyestead {

// g of the standard in one g of the bought-in match.
double match_strength(const Colour& colour);

// Where powder was never tried, what holds at the bought-in one's strength is shown beside what holds at this: our own
// choice.
inline constexpr double kIfWeaker = 1.0 / 3;

struct Strength {
    double tested_share = 0;       // of the grams
    std::optional<double> tested;  // over the tested ones
    // Empty: untested.
    std::optional<double> known() const { return tested_share >= 0.5 ? tested : std::nullopt; }
};

Strength strength_of(const Records& records, const Colour& colour, const std::vector<FinishedVat>& vats);

}  // namespace dyestead
