// forecast.h - what would it be worth to know one thing about a season before deciding on it?
#pragma once

#include <vector>

namespace dyestead {

// Seasons drawn: what the one thing was in each, and what growing brought over buying (below nought: lost). Without a
// forecast one grows always or never; with it, wherever seasons like that bring something on average. The difference, a
// season. Seasons alike in the thing are judged together, the same ones always: how they came out is not known before.
// Requires: as many inputs as values, at least one.
double perfect_forecast(const std::vector<double>& inputs, const std::vector<double>& values);

}  // namespace dyestead
