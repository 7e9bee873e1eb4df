// can_make.h - can so many loaves be made from what is there, what runs out first, and what is to be bought?
#pragma once

#include <optional>
#include <vector>

#include "domain/decisions/loaf_needs.h"
#include "domain/ledger/holds.h"

namespace dyestead {

// A lot a maker would reach for, in the order of the shelf: open ones, then first to expire, then oldest.
struct TakeFrom {
    Key<Lot> lot;
    std::int64_t quantity = 0;
};

struct Ingredient {
    Key<Material> material;
    std::int64_t needed = 0;     // base units
    std::int64_t there = 0;      // not past its date on the day
    std::int64_t past_date = 0;  // on the shelf, and not counted
    std::int64_t held = 0;       // on hold or recalled, and not counted
    std::vector<TakeFrom> take;
    std::int64_t short_by() const { return needed > there ? needed - there : 0; }
};

struct CanMake {
    LoafNeeds loaf;  // for the loaves asked for
    std::vector<Ingredient> ingredients;
    int loaves = 0;                         // asked for
    int most_loaves = 0;                    // whole loaves that what is there is enough for
    std::optional<Key<Material>> runs_out;  // first, among what is needed; none: the recipe says nothing
    bool enough() const { return most_loaves >= loaves && loaf.unsaid.empty(); }
};

// On a day from ledger.as_of on, with the stock of ledger.as_of.
CanMake can_make(const Shop& shop, const Ledger& ledger, Key<Material> bar, int loaves, Day day);
// The same for many bars; `held`: of the ledger.
CanMake can_make(const Records& records, const Holds& held, Key<Material> bar, int loaves, Day day);

}  // namespace dyestead
