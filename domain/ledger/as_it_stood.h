// as_it_stood.h - what did the books say on another day? Of an earlier one it is read off the ledger at hand, for a
// fact dated later changes nothing of what was booked before: a small part of the work of a replay.
#pragma once

#include "domain/ledger/ledger.h"

namespace dyestead {

// The same as replay(shop, day), but for sources that no movement names. Requires: `ledger` is a replay of that shop.
Ledger as_it_stood(const Shop& shop, const Ledger& ledger, Day day);

}  // namespace dyestead
