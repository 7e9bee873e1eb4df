#include "domain/decisions/price_changes.h"

#include <algorithm>
#include <cmath>

#include "domain/ledger/as_it_stood.h"

namespace dyestead {

namespace {

constexpr double kSmallest = 0.005;

}  // namespace

std::vector<PriceChange> price_changes(const Shop& shop, const Ledger& ledger, const Prices& now, Day since) {
    const Prices then = prices(shop, as_it_stood(shop, ledger, since), now.aim);
    std::vector<PriceChange> changes;
    for (const BarPrice& bar : now.bars) {
        const auto before = std::ranges::find(then.bars, bar.bar, &BarPrice::bar);
        if (before == then.bars.end() || !before->replacement || !bar.replacement) continue;
        PriceChange change{bar.bar, before->replacement->full(), bar.replacement->full(), false, std::nullopt};
        change.fell_under = bar.under_aim && !before->under_aim && before->shelf && before->advised;
        if (change.fell_under) change.restores = bar.advised;
        if (change.fell_under || std::abs(change.cost_now - change.cost_then) >= kSmallest) changes.push_back(change);
    }
    std::ranges::stable_sort(changes, [](const PriceChange& a, const PriceChange& b) {
        if (a.fell_under != b.fell_under) return a.fell_under;
        return a.cost_now - a.cost_then > b.cost_now - b.cost_then;
    });
    return changes;
}

}  // namespace dyestead
