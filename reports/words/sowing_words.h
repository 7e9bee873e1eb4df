// sowing_words.h - what the sowing plan says of a plant beside its figures.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/sowing.h"

namespace dyestead::reports {

// All that a forecast knows; from 100 up whole.
double two_digits(double number);

// "7 m2 in a usual year, 9 m2 in a bad one, 6 m2 in a good one"; blank where there is no usual year.
std::string shown_years(const YearRange& range, std::string (*shown)(double));
std::string shown_m2(double square_metres);
std::string shown_seed(Kind kind, double base);

// Where a figure comes from: "your records, 3 seasons".
std::string origin(const SowingFigure& figure);

std::string gap_sentence(const Shop& shop, const ColourSowing& colour, SowingGap gap);

// Days, what stands, powder there, seed: one sentence each, in the order they are wanted.
std::vector<std::string> sowing_sentences(const Shop& shop, const ColourSowing& colour);

}  // namespace dyestead::reports
