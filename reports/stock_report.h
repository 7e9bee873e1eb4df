// stock_report.h - what is everything worth at cost on a day? For the accountant without the shop's
// own hours, since an owner's hours are no cost incurred; the full cost stands beside it.
#pragma once

#include "domain/ledger/ledger.h"
#include "reports/document.h"

namespace dyestead::reports {

// At the end of ledger.as_of. The totals are the stock and in-progress terms of the cost partition.
Document stock_report(const Shop& shop, const Ledger& ledger);

}  // namespace dyestead::reports
