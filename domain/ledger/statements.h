// statements.h - where does every penny, gram and minute stand at the end of a day? One partition,
// exact: In = Stock + In progress + Sold + Lost + Given + Period, for each part of the cost.
#pragma once

#include "domain/ledger/ledger.h"

namespace dyestead {

struct CostPartition {
    Cost in;
    Cost stock;        // raw, seed, harvest, pigment, bars ready, bars out at shops
    Cost in_progress;  // standing plantings, vats not dry, batches not cut, bars in cure
    Cost sold;
    Cost lost;
    Cost given;
    Cost period;

    Cost out() const { return stock + in_progress + sold + lost + given + period; }
};

// Requires: day <= ledger.as_of.
CostPartition cost_partition(const Shop& shop, const Ledger& ledger, Day day);

struct QuantityPartition {
    std::int64_t in = 0;    // already here, delivered, shortfalls still open
    std::int64_t made = 0;  // harvested, dried, cut
    std::int64_t stock = 0;
    std::int64_t in_progress = 0;  // bars in cure
    std::int64_t sold = 0;
    std::int64_t lost = 0;  // less what counts found
    std::int64_t given = 0;
    std::int64_t used = 0;  // into a planting, vat, batch or wrapping

    std::int64_t out() const { return stock + in_progress + sold + lost + given + used; }
};

// One for each of shop.all<Material>(), in base units as the material is held.
std::vector<QuantityPartition> quantity_partitions(const Shop& shop, const Ledger& ledger, Day day);

}  // namespace dyestead
