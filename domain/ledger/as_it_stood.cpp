#include "domain/ledger/as_it_stood.h"

#include <algorithm>

#include "domain/ledger/replay.h"
#include "domain/ledger/stock_value.h"
#include "domain/ledger/terms.h"

namespace dyestead {
namespace {

// Which lot a later word on the cost of averaged goods was about stands in no movement.
bool is_averaged(const Ledger& ledger, const Movement& movement) {
    return ledger.accounts.kind(movement.from) == AccountKind::pool ||
           ledger.accounts.kind(movement.to) == AccountKind::pool;
}

template <class Line>
std::vector<Line> until(const std::vector<Line>& lines, Day day) {
    std::vector<Line> until;
    std::ranges::copy_if(lines, std::back_inserter(until), [&](const Line& line) { return line.day <= day; });
    return until;
}

std::vector<LotState> lots_of(const Shop& shop, const Ledger& later, const Ledger& then) {
    const std::vector<LotQuantity> quantities = lot_quantities(shop, later, then.as_of);
    std::vector<LotState> lots(later.lots.size());
    std::vector<std::int64_t> left;
    for (std::size_t i = 0; i < lots.size(); ++i) {
        const LotState& known = later.lots[i];
        left.push_back(quantities[i].left);
        if (!known.made || *known.made > then.as_of) continue;
        lots[i] = {known.made, known.ready, known.best_before, quantities[i].received, quantities[i].left, {}, {}};
    }
    for (const Movement& movement : then.movements)
        if (then.accounts.kind(movement.to) == AccountKind::lot)
            lots[then.accounts.index(movement.to)].cost_in += movement.cost;
    const std::vector<Cost> costs = lot_costs(shop, then.accounts, then.balances, left);
    for (std::size_t i = 0; i < lots.size(); ++i) lots[i].cost = costs[i];
    return lots;
}

}  // namespace

Ledger as_it_stood(const Shop& shop, const Ledger& ledger, Day day) {
    if (day > ledger.as_of) return replay(shop, day);
    Ledger then;
    then.as_of = day;
    then.accounts = ledger.accounts;
    then.balances.resize(ledger.balances.size());
    const auto end = std::ranges::find_if(ledger.movements, [&](const Movement& each) { return each.on() > day; });
    std::uint32_t sources = 0;
    for (auto movement = ledger.movements.begin(); movement != end; ++movement) {
        if (is_averaged(ledger, *movement)) return replay(shop, day);
        then.balances[movement->from] -= movement->cost;
        then.balances[movement->to] += movement->cost;
        sources = std::max(sources, movement->source + 1);
    }
    then.movements.assign(ledger.movements.begin(), end);
    then.sources.assign(ledger.sources.begin(), ledger.sources.begin() + sources);
    then.lots = lots_of(shop, ledger, then);
    then.sold = until(ledger.sold, day);
    then.powder_sold = until(ledger.powder_sold, day);
    then.returned = until(ledger.returned, day);
    then.findings = until(ledger.findings, day);
    return then;
}

}  // namespace dyestead
