// ledger_support.h - short questions to a ledger, for its tests.
#pragma once

#include <algorithm>

#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "tests/support/shop_builder.h"

namespace dyestead::test {

inline const LotState& state(const Shop& shop, const Ledger& ledger, Key<Lot> lot) {
    return ledger.lots[static_cast<std::size_t>(shop.find(lot) - shop.all<Lot>().data())];
}

inline bool has(const Ledger& ledger, FindingCode code) {
    return std::ranges::any_of(ledger.findings, [&](const Finding& finding) { return finding.code == code; });
}

inline Money materials(const Ledger& ledger, Boundary boundary) {
    return ledger.balance(boundary).materials;
}

}  // namespace dyestead::test
