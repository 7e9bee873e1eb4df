// losses.h - what was lost and what was given away in a period, why, and what had it cost?
#pragma once

#include <optional>

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"

namespace dyestead {

enum class LossKind : std::uint8_t {
    spoiled,
    spilled,
    expired,
    other,
    failed_crop,      // a bed that was never harvested, or part of one lost
    failed_vat,       // dried, and nothing weighed
    rejected_bars,    // beyond the usual at the cut, or no good bar
    nothing_for_it,   // paid for, and no goods came in
    found_or_missed,  // at a stock-take
    // given
    given,
    sample,
    own_use,
    test,
};
inline constexpr std::size_t kLossKinds = static_cast<std::size_t>(LossKind::test) + 1;
constexpr bool is_gift(LossKind kind) {
    return kind >= LossKind::given;
}

struct LossLine {
    LossKind kind{};
    FactRef fact;
    Day day{};
    std::uint32_t material = 0;  // place in shop.all<Material>(), where there is a quantity
    std::int64_t quantity = 0;   // base units; below nought: found again
    Cost cost;
};

// What kind of loss or gift a movement is; nothing where it is none. Of what was found again its reverse.
std::optional<LossKind> loss_kind(const Shop& shop, const Ledger& ledger, const Movement& movement);

// Every movement into the lost and given accounts, less those out of them, in the order of the books.
std::vector<LossLine> losses(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead
