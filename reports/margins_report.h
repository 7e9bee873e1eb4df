// margins_report.h - what did each kind of bar bring in over a period? The year's gross margin, kind by kind.
#pragma once

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"
#include "reports/document.h"

namespace dyestead::reports {

Document margins_report(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead::reports
