// reorder_report.h - on paper: what runs out first, what to order, from whom and by when?
#pragma once

#include "domain/decisions/reorder.h"
#include "reports/document.h"

namespace dyestead::reports {

// Requires: answer == reorder(shop, ledger).
Document reorder_report(const Shop& shop, const Ledger& ledger, const Reorder& answer);

}  // namespace dyestead::reports
