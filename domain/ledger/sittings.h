// sittings.h - whose share of a sitting is how long? Minutes spent on several things in one go are shared
// over those of them that had been by then: equally over the kinds of work, and within a kind by what
// was worked on (area, leaf, bars, loaves). Running remainders: the shares add up to the sitting.
#pragma once

#include <vector>

#include "domain/ledger/finding.h"

namespace dyestead {

struct SittingShare {
    const Sitting* sitting = nullptr;
    const SittingAt* line = nullptr;
    FactRef at;  // the tending, harvest, vat ... worked at
    Day day{};   // of that
    Minutes time;
};

// What a line of a sitting names; the first, should it name several. Kind and key of nothing where it
// names none.
FactRef worked_at(const SittingAt& line);

struct SharedSitting {
    const Sitting* sitting = nullptr;
    std::vector<SittingShare> shares;          // none: the time is the office's
    std::vector<const SittingAt*> left_out{};  // names nothing on record by that day
};

// The sittings up to the end of a day, in key order.
std::vector<SharedSitting> shared_sittings(const Shop& shop, Day as_of);

}  // namespace dyestead
