// order.h - in which order did things happen? Facts become events, sorted by day, phase of the day,
// content and key, so that the order of typing has no meaning. A fact that makes a lot comes before
// the first fact of that day that names it.
#pragma once

#include <array>
#include <vector>

#include "domain/ledger/finding.h"
#include "domain/ledger/shop_lines.h"

namespace dyestead {

enum class Phase : std::uint8_t {
    settings,
    already_here,
    delivery,
    correction,
    sow,
    tend,
    harvest,   // and seed kept
    bed_lost,  // what was cut before is safe
    vat,
    drying,
    batch,
    split,  // batches poured off from another
    cut,
    wrap,
    sale,     // and out to a shop
    settled,  // what became of bars out at a shop
    returned,
    loss,
    sitting,
    last,   // planting ended, bills
    count,  // the shelf at the end of the day
};

struct Event {
    Day day{};
    // Best before, quantity, money: what tells two facts of a day apart before their keys do.
    std::array<std::int64_t, 3> content{};
    std::int64_t key = 0;
    std::uint32_t index = 0;  // place in its list of the shop
    Phase phase{};
    FactKind kind{};
    bool assumed = false;  // a PlantingEnd that nobody recorded; index is the planting's
};

// The events up to the end of `as_of`.
std::vector<Event> in_order(const Shop& shop, const ShopLines& lines, Day as_of);

// The last day of a planting's life where no end is on record: the year of its last crop.
Day assumed_end(const Planting& planting, const Plant& plant);

}  // namespace dyestead
