// sowing_report.h - on paper: what to sow for the bars wanted, how that was reckoned, and by when?
#pragma once

#include "domain/decisions/sowing.h"
#include "reports/document.h"

namespace dyestead::reports {

// Requires: answer == sowing(shop, ledger, ...).
Document sowing_report(const Shop& shop, const Ledger& ledger, const Sowing& answer);

}  // namespace dyestead::reports
