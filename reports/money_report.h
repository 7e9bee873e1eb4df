// money_report.h - what money came in and went out in a period, by kind?
#pragma once

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"
#include "reports/document.h"

namespace dyestead::reports {

Document money_report(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead::reports
