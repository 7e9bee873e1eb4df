// taken_up.h - which bars took up the running costs of a period, and how much of that is still with bars here at its
// end?
#pragma once

#include <vector>

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"

namespace dyestead {

struct TakenUp {
    FactRef fact;    // the cut that made the bars
    Money overhead;  // what they took up
    Money still;     // of it, with those still here
};

// Requires: period.last <= ledger.as_of.
std::vector<TakenUp> taken_up(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead
