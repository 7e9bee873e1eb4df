// fair_report.h - on paper: what to take to a fair, and how did one go?
#pragma once

#include "domain/decisions/fair_plan.h"
#include "reports/document.h"

namespace dyestead::reports {

Document fair_plan_report(const Shop& shop, const Ledger& ledger, const FairPlan& plan);
Document fair_result_report(const Shop& shop, const Ledger& ledger, const FairResult& result, const FairPlan& before);

}  // namespace dyestead::reports
