// verdict_report.h - is growing this colour worth the hours? The verdict on paper: the sentence, the
// figures side by side, what would turn it, and all it stands on.
#pragma once

#include "domain/decisions/verdict.h"
#include "reports/document.h"

namespace dyestead::reports {

// Requires: verdict == dyestead::verdict(shop, ledger, ...) or look_ahead(shop, ledger.as_of, ...), so that figures and
// findings belong together.
Document verdict_report(const Shop& shop, const Ledger& ledger, const Verdict& verdict);

}  // namespace dyestead::reports
