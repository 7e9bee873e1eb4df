// verdict_finding_words.h - what does the verdict lack, or had to take from elsewhere? One line each.
#pragma once

#include <string_view>
#include <vector>

#include "domain/decisions/verdict.h"
#include "reports/document.h"

namespace dyestead::reports {

// "strength-untested": stays the same in every language.
std::string_view code_of(VerdictFindingCode code);

std::vector<FindingLine> verdict_finding_lines(const Shop& shop, const std::vector<VerdictFinding>& findings);

}  // namespace dyestead::reports
