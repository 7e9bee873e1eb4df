// replay.h - the pure reference: the facts up to a day, replayed into a ledger. A fact dated later
// changes nothing, so replay(shop, day) equals the replay of the shop with all later facts taken out.
#pragma once

#include "domain/ledger/ledger.h"

namespace dyestead {

Ledger replay(const Shop& shop, Day as_of);

}  // namespace dyestead
