// improve_words.h - where the hours for a colour went, and the changes that would help most, in the maker's words.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/improve.h"

namespace dyestead::reports {

std::string hours_at_words(const StepHours& step);
// Below where the hours went: whose words the steps are, and whether practice shows.
std::string hours_note(const Verdict& verdict);
// "Rain or tap water instead of bought water (£0.42 a kilo): £9 more a season's bars." One sentence each.
std::vector<std::string> improvement_lines(const Shop& shop, const Ledger& ledger, const Verdict& verdict);

}  // namespace dyestead::reports
