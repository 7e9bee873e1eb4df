// losses_report.h - what was lost and given away in a period, line by line, and what had it cost?
#pragma once

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"
#include "reports/document.h"

namespace dyestead::reports {

Document losses_report(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead::reports
