#include "domain/ledger/where_used.h"

#include "domain/ledger/goods_moved.h"

namespace dyestead {

std::vector<UseStep> where_used(const Ledger& ledger, std::uint32_t lot) {
    const std::vector<GoodsMove> moves = goods_moved(ledger);
    const Followed followed = Followed::forward(ledger, moves, {ledger.accounts.lots + lot});
    std::vector<UseStep> steps;
    for (const GoodsMove& move : moves)
        if (const auto known = followed.step(move))
            steps.push_back({move.movement, move.from, move.to, move.quantity, *known == Known::named});
    return steps;
}

}  // namespace dyestead
