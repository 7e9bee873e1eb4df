#include "domain/ledger/taken_up.h"

#include <algorithm>

#include "domain/ledger/stock_value.h"

namespace dyestead {

std::vector<TakenUp> taken_up(const Shop& shop, const Ledger& ledger, Period period) {
    const auto lots = lot_quantities(shop, ledger, period.last);
    std::vector<TakenUp> all;
    for (const Movement& movement : ledger.movements) {
        if (movement.from != account(Boundary::overhead) || !period.contains(movement.on())) continue;
        TakenUp& one = all.emplace_back(TakenUp{ledger.sources[movement.source].fact, movement.cost.overhead, Money{}});
        if (ledger.accounts.kind(movement.to) != AccountKind::lot) continue;
        const LotQuantity& lot = lots[ledger.accounts.index(movement.to)];
        if (lot.received <= 0 || lot.left <= 0) continue;
        one.still =
            Money::millionths(share_of(one.overhead.in_millionths(), std::min(lot.left, lot.received), lot.received));
    }
    return all;
}

}  // namespace dyestead
