// memory_report.h - a first answer with no records at all: the verdict as ten answers from memory make it.
#pragma once

#include "domain/decisions/verdict.h"
#include "reports/document.h"

namespace dyestead::reports {

// Requires: verdict.from_memory; the answers are in the shop.
Document memory_report(const Shop& shop, const Ledger& ledger, const Verdict& verdict);

}  // namespace dyestead::reports
