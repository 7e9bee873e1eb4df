// finding_words.h - what in the records does not add up, as lines for people: one line for each cause,
// not one for each time it happened.
#pragma once

#include <string_view>
#include <vector>

#include "domain/ledger/finding.h"
#include "reports/document.h"

namespace dyestead::reports {

// "more-used-than-there": stays the same in every language.
std::string_view code_of(FindingCode code);

// Findings with the same code about the same thing (material, person, bar ...) become one line with
// their number; it names the first of them. In the order of first appearance.
std::vector<FindingLine> finding_lines(const Shop& shop, const std::vector<Finding>& findings);

}  // namespace dyestead::reports
