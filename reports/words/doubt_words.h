// doubt_words.h - how sure a verdict is, in words: chances in tenths, a bad year, a usual one, a good one.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/verdict.h"

namespace dyestead::reports {

// "7 in 10"; at the ends "fewer than 1 in 10", "more than 9 in 10".
std::string in_tenths(double chance);

std::string doubt_of_words(DoubtOf of);

// Empty where nothing can be said of it.
std::vector<std::string> doubt_lines(const Shop& shop, const Verdict& verdict);

}  // namespace dyestead::reports
