// memory_report.h - a first answer with no records at all: the verdict as ten answers from memory make it.
#pragma once

#include "domain/decisions/verdict.h"
#include "reports/document.h"

namespace dyestead::reports {

// What was asked, and what was answered by a day.
Table answers_table(const Shop& shop, Day as_of, Key<dyestead::Colour> colour);

// Requires: verdict.from_memory; the answers are in the shop.
Document memory_report(const Shop& shop, const Ledger& ledger, const Verdict& verdict);

}  // namespace dyestead::reports
