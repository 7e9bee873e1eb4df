// stock_value.h - what is in the shop on a day, how much of each lot, and what did it cost?
#pragma once

#include <array>

#include "domain/ledger/terms.h"

namespace dyestead {

enum class StockKind : std::uint8_t {
    raw,
    seed,
    harvest,
    pigment,
    bars_ready,
    bars_out,  // at somebody's shop, not sold
    // still in the making
    plantings,
    vats,     // not dry
    batches,  // not cut
    bars_in_cure,
};
inline constexpr std::size_t kStockKinds = static_cast<std::size_t>(StockKind::bars_in_cure) + 1;
constexpr bool is_in_progress(StockKind kind) {
    return kind >= StockKind::plantings;
}

struct StockItem {
    StockKind kind{};
    Account account = 0;
    std::int64_t quantity = 0;  // base units of the lot's material; 0 for what is neither a lot nor out at a shop
    Cost cost;
};

struct StockValue {
    std::array<Cost, kStockKinds> of{};
    std::vector<StockItem> items;  // all that hold goods or cost, in the order of the accounts

    const Cost& operator[](StockKind kind) const { return of[static_cast<std::size_t>(kind)]; }
    Cost stock() const;
    Cost in_progress() const;
};

// Of a pool at the moving average, that of its goods. Requires: the account is not on the boundary.
StockKind stock_kind(const Shop& shop, const Ledger& ledger, Account account, Day day);

// At the end of a day, from the movements. Requires: day <= ledger.as_of.
StockValue stock_value(const Shop& shop, const Ledger& ledger, Day day);

// How much every lot held at the end of a day, and how much it had received by then.
struct LotQuantity {
    std::int64_t left = 0;
    std::int64_t received = 0;
};
std::vector<LotQuantity> lot_quantities(const Shop& shop, const Ledger& ledger, Day day);

}  // namespace dyestead
