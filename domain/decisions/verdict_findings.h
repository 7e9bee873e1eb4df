// verdict_findings.h - what is missing in the records, or was taken from elsewhere, for a verdict?
#pragma once

#include "domain/decisions/figures.h"
#include "domain/decisions/soap_hour.h"

namespace dyestead {

std::vector<VerdictFinding> verdict_findings(const Records& records, const Gathered& gathered, const Verdict& verdict,
                                             const BaseRecipe& base, const SoapHour& soap);

}  // namespace dyestead
