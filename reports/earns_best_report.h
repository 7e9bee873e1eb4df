// earns_best_report.h - on paper: what should be made with what there is, and what stops there being more?
#pragma once

#include "domain/decisions/earns_best.h"
#include "reports/document.h"

namespace dyestead::reports {

// Requires: answer == earns_best(shop, ledger, ...).
Document earns_best_report(const Shop& shop, const Ledger& ledger, const EarnsBest& answer);

}  // namespace dyestead::reports
