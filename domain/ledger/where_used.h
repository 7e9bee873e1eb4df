// where_used.h - where did the goods of a lot go, and does the maker know it or is it only the rule?
//
// Every step forward from a lot: into a bed, vat, batch or wrapping, from there into the lot that was
// made, and so on to what was sold, lost or given away. A use that ran short and was settled from this
// lot later counts as a use of this lot. Quantities are those of the step: all bars of a batch that
// holds some of the lot.
#pragma once

#include "domain/ledger/ledger.h"

namespace dyestead {

struct UseStep {
    std::uint32_t movement = 0;  // place in ledger.movements
    Account from = 0;            // of a settled shortfall: the lot, though the movement is from provisional
    Account to = 0;
    std::int64_t quantity = 0;  // base units of the material of the movement's source
    bool named = false;         // this step and every one before it was named by the maker
};

// In the order of the books. `lot`: its place in shop.all<Lot>().
std::vector<UseStep> where_used(const Ledger& ledger, std::uint32_t lot);

}  // namespace dyestead
