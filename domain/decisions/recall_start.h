// recall_start.h - which goods are meant by what stands in a recall letter or on a jar?
#pragma once

#include <string_view>

#include "domain/ledger/ledger.h"

namespace dyestead {

// The code of a lot, batch, vat or planting: that one. A supplier's lot number, or the code of a delivery, a
// material or a supplier: every lot of it; with `from`, of those that came or were made on that day or later.
// Nothing when it is none of these, or no such lot is on record by the books' day.
std::vector<Account> recall_start(const Shop& shop, const Ledger& ledger, std::string_view code,
                                  std::optional<Day> from);

}  // namespace dyestead
