// prices_report.h - on paper: what does each kind of bar cost to make again, and what should it sell for?
#pragma once

#include "domain/decisions/prices.h"
#include "reports/document.h"

namespace dyestead::reports {

// Requires: answer == prices(shop, ledger).
// What changed is told since that day; without it, over the last three months.
Document prices_report(const Shop& shop, const Ledger& ledger, const Prices& answer,
                       std::optional<Day> since = std::nullopt);

}  // namespace dyestead::reports
