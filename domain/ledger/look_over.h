// look_over.h - what does not add up in the facts that move neither goods nor money: notes, times at a vat, bundles,
// seed tried?
#pragma once

#include <vector>

#include "domain/ledger/finding.h"

namespace dyestead {

// Of facts dated to `as_of`, in order of day.
std::vector<Finding> look_over(const Shop& shop, Day as_of);

}  // namespace dyestead
