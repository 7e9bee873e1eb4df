// follow_earned.h - from which facts does what a period earned come: its takings, the running costs its bars took up,
// its gross margin, what was earned in the end?
#pragma once

#include <cstdint>

#include "domain/ledger/trace.h"

namespace dyestead {

// As in Earned. Taken up beyond: by the cuts that took it up, each in proportion.
enum class EarnedPart : std::uint8_t {
    takings,
    sales_tax,
    net_takings,
    tin_difference,
    overhead_accrued,
    overhead_absorbed,
    under_absorbed,
    over_absorbed_in_stock,
    over_absorbed_in_sales,
    gross_margin,
    earned,
};
inline constexpr std::size_t kEarnedParts = static_cast<std::size_t>(EarnedPart::earned) + 1;

// What was taken stands among the materials and costs below nought, so that the leaves' sum without own hours is the
// figure without them, and their full sum the figure with them. Requires: period.last <= ledger.as_of.
std::vector<Leaf> follow(const Shop& shop, const Ledger& ledger, EarnedPart part, Period period);

}  // namespace dyestead
