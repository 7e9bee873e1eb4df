// band_of.h - of many values, which is a bad, a usual and a good one: those with a tenth, half and nine tenths below?
#pragma once

#include <vector>

#include "domain/decisions/doubt.h"

namespace dyestead {

inline constexpr double kBad = 0.1;
inline constexpr double kUsual = 0.5;
inline constexpr double kGood = 0.9;

// Exactly these values, not between two. Requires: at least one.
Band band_of(const std::vector<double>& values);

}  // namespace dyestead
