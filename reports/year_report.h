// year_report.h - what did a period earn, on cost without the shop's own hours, and with them?
#pragma once

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"
#include "reports/document.h"

namespace dyestead::reports {

Document year_report(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead::reports
