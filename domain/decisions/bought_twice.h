// bought_twice.h - what is got in two ways: from two suppliers, or put down as two things? The part of reorder.h that
// asks whether one order would do.
//
// Two materials are taken for one where they are for the same, held alike, and their names have the same words in any
// order ("Coconut oil", "oil, coconut"). Our own rule, no source: it can only ask, the maker knows.
#pragma once

#include "domain/decisions/reorder.h"

namespace dyestead {

// Bought in the last 12 months; by the name of the first.
std::vector<BoughtTwice> bought_twice(const Records& records);

}  // namespace dyestead
