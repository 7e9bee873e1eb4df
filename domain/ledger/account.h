// account.h - between which points does cost move? A movement always leaves one account and enters
// another, so that nothing leaks: the terms of the partition are sums of accounts.
#pragma once

#include <cstdint>

namespace dyestead {

// An account's number. First the boundary accounts below, then one for every lot, planting, vat,
// batch, heap of bars out at a shop and material, each in the order of its list.
using Account = std::uint32_t;

enum class Boundary : Account {
    // where cost comes in
    already_here,
    delivered,
    wages,  // of paid people, in materials
    energy,
    hours,        // of the shop's own people
    bills,        // fees and bills paid
    provisional,  // used before it came: at the last known cost, until it comes
    // where it goes out
    sold,
    lost,
    given,
    // the period's
    selling,        // fees, stalls, travel, selling hours
    garden,         // what a closed planting had left
    overhead,       // general overhead: accrued (statements.h) less what bars absorbed
    dye_avoidable,  // dye-only bills with no bed or vat in hand: would not have been paid without growing
    dye_sunk,       // dye-only bills already spent either way
    shortfall,      // provisional cost against what it came to
    office,         // hours that belong to no bed, vat, batch or sale
    corrections,    // later words on what goods cost that were no longer here, and credit beyond their cost
    other,
};
inline constexpr Account kBoundaries = static_cast<Account>(Boundary::other) + 1;

constexpr Account account(Boundary boundary) {
    return static_cast<Account>(boundary);
}

// A pool holds the cost of a material while it is costed at the moving average; its goods stay in lots.
enum class AccountKind : std::uint8_t { boundary, lot, planting, vat, batch, out, pool };

// Where each kind of account begins in the numbering.
struct AccountPlan {
    Account lots = kBoundaries;
    Account plantings = kBoundaries;
    Account vats = kBoundaries;
    Account batches = kBoundaries;
    Account outs = kBoundaries;
    Account pools = kBoundaries;  // one for every material
    Account end = kBoundaries;

    constexpr AccountKind kind(Account account) const {
        if (account < lots) return AccountKind::boundary;
        if (account < plantings) return AccountKind::lot;
        if (account < vats) return AccountKind::planting;
        if (account < batches) return AccountKind::vat;
        if (account < outs) return AccountKind::batch;
        if (account < pools) return AccountKind::out;
        return AccountKind::pool;
    }
    // The place in its list of the lot, planting, vat, batch, OutAtShop or material behind an account.
    constexpr std::uint32_t index(Account account) const {
        switch (kind(account)) {
            case AccountKind::boundary: return account;
            case AccountKind::lot: return account - lots;
            case AccountKind::planting: return account - plantings;
            case AccountKind::vat: return account - vats;
            case AccountKind::batch: return account - batches;
            case AccountKind::out: return account - outs;
            case AccountKind::pool: return account - pools;
        }
        return 0;
    }
};

}  // namespace dyestead
