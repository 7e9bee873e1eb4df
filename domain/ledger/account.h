// account.h - between which points does cost move? A movement always leaves one account and enters
// another, so that nothing leaks: the terms of the partition are sums of accounts.
#pragma once

#include <cstdint>

namespace dyestead {

// An account's number. First the boundary accounts below, then one for every lot, planting, vat,
// batch and heap of bars out at a shop, each in the order of its list.
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
    other,
};
inline constexpr Account kBoundaries = static_cast<Account>(Boundary::other) + 1;

constexpr Account account(Boundary boundary) {
    return static_cast<Account>(boundary);
}

enum class AccountKind : std::uint8_t { boundary, lot, planting, vat, batch, out };

// Where each kind of account begins in the numbering.
struct AccountPlan {
    Account lots = kBoundaries;
    Account plantings = kBoundaries;
    Account vats = kBoundaries;
    Account batches = kBoundaries;
    Account outs = kBoundaries;
    Account end = kBoundaries;

    constexpr AccountKind kind(Account account) const {
        if (account < lots) return AccountKind::boundary;
        if (account < plantings) return AccountKind::lot;
        if (account < vats) return AccountKind::planting;
        if (account < batches) return AccountKind::vat;
        if (account < outs) return AccountKind::batch;
        return AccountKind::out;
    }
    // The place in its list of the lot, planting, vat, batch or OutAtShop behind an account.
    constexpr std::uint32_t index(Account account) const {
        switch (kind(account)) {
            case AccountKind::boundary: return account;
            case AccountKind::lot: return account - lots;
            case AccountKind::planting: return account - plantings;
            case AccountKind::vat: return account - vats;
            case AccountKind::batch: return account - batches;
            case AccountKind::out: return account - outs;
        }
        return 0;
    }
};

}  // namespace dyestead
