// can_make_report.h - on paper: can these loaves be made, which lots to take, and what is to be bought?
#pragma once

#include "domain/decisions/can_make.h"
#include "reports/document.h"

namespace dyestead::reports {

Document can_make_report(const Shop& shop, const Ledger& ledger, Key<Material> bar, const CanMake& answer);

}  // namespace dyestead::reports
