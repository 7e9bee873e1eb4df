// hours_report.h - where did the hours go in a period, by stage of the work and person?
#pragma once

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"
#include "reports/document.h"

namespace dyestead::reports {

Document hours_report(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead::reports
