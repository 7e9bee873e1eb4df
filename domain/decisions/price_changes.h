// price_changes.h - since a day: which bars have become dearer or cheaper to make, which fell under what they are to
// bring in, and which shelf price restores it?
//
// The same question (prices.h) asked on both days, each with the prices, hourly targets and recipes known by then.
#pragma once

#include "domain/decisions/prices.h"

namespace dyestead {

struct PriceChange {
    Key<Material> bar;
    double cost_then = 0;  // to make one good bar again, own hours in
    double cost_now = 0;
    bool fell_under = false;         // reached the aim then at its price, and does not now
    std::optional<double> restores;  // the point on the ladder that reaches it again
};

// Only bars whose cost is known on both days and differs by half of the smallest coin or more, or that fell under;
// those that fell under first. `now`: prices(shop, ledger) of the later day; both days are held against its aim.
std::vector<PriceChange> price_changes(const Shop& shop, const Ledger& ledger, const Prices& now, Day since);

}  // namespace dyestead
