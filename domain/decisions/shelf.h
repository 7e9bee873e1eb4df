// shelf.h - which bars are on the curing shelf, which may be sold, which are held or too old, and what
// do they weigh by now?
#pragma once

#include "domain/decisions/records.h"
#include "domain/ledger/holds.h"

namespace dyestead {

enum class BarState : std::uint8_t { in_cure, ready, held, past_best };

struct WeightOnShelf {
    Day day{};
    Ratio per_bar;                       // milligrams a bar, at the latest weighing
    std::optional<Ratio> lost;           // share of the first weighing's; nothing: weighed once only
    std::optional<bool> below_declared;  // nothing: the recipe is not known, or declares no weight
};

// A lot of bars of which some are left.
struct ShelfLot {
    Key<Lot> lot;
    Key<Material> bar;
    std::int64_t bars = 0;  // thousandths
    BarState state{};       // the graver of two: held, then past its best, then in cure
    std::optional<Day> cut;
    Day ready{};
    std::optional<Day> best_before;  // as said at the cut, else by the recipe's days
    std::optional<Held> held;
    std::optional<WeightOnShelf> weight;
};

struct Shelf {
    std::vector<ShelfLot> lots;               // by the day they are ready, then by key
    std::int64_t bars(BarState state) const;  // thousandths
};

// At the end of the ledger's day.
Shelf shelf(const Records& records);

}  // namespace dyestead
