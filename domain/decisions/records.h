// records.h - reading the ledger for a decision: which fact is a movement from, and how much is that
// as a plain number? From here on doubles are allowed, for a decision is an estimate.
#pragma once

#include <algorithm>
#include <optional>
#include <span>

#include "domain/decisions/window.h"
#include "domain/facts/material_amount.h"
#include "domain/ledger/ledger.h"

namespace dyestead {

struct Records {
    const Shop& shop;
    const Ledger& ledger;

    // The fact a movement comes from, when it is of this kind; else null.
    template <class Fact>
    const Fact* from(const Movement& movement) const {
        const FactRef fact = ledger.sources[movement.source].fact;
        return fact.kind == kKindOf<Fact> ? shop.find(Key<Fact>{fact.key}) : nullptr;
    }
    // Of those days alone: movements stand in the order of their days, so that no other need be looked at.
    std::span<const Movement> movements(Window days) const {
        if (days.last < days.first) return {};
        const auto begin = std::ranges::lower_bound(ledger.movements, days.first, {}, &Movement::on);
        const auto end = std::ranges::upper_bound(ledger.movements, days.last, {}, &Movement::on);
        return {begin, end};
    }
    std::span<const Movement> movements_since(Day first) const { return movements({first, ledger.as_of}); }
    // The material of a movement with a quantity.
    const Material& material(const Movement& movement) const {
        return shop.all<Material>()[ledger.sources[movement.source].material];
    }
    // What stands behind an account of that kind.
    const Planting& planting(Account account) const { return shop.all<Planting>()[ledger.accounts.index(account)]; }
    const Vat& vat(Account account) const { return shop.all<Vat>()[ledger.accounts.index(account)]; }
    const Lot& lot(Account account) const { return shop.all<Lot>()[ledger.accounts.index(account)]; }
    const Batch& batch(Account account) const { return shop.all<Batch>()[ledger.accounts.index(account)]; }

    AccountKind kind(Account account) const { return ledger.accounts.kind(account); }
    const LotState* state(Key<Lot> key) const {
        const Lot* lot = shop.find(key);
        return lot == nullptr ? nullptr : &ledger.lots[static_cast<std::size_t>(lot - shop.all<Lot>().data())];
    }
};

constexpr double number(Money money) {
    return static_cast<double>(money.in_millionths()) / 1e6;
}
constexpr double number(Minutes minutes) {
    return static_cast<double>(minutes.in_millionths()) / 1e6;
}
constexpr double number(Ratio ratio) {
    return static_cast<double>(ratio.top) / static_cast<double>(ratio.bottom);
}

// Base units of a material, as it is held, in grams. Nothing where no density leads there.
inline std::optional<double> grams(const Material& material, std::int64_t base) {
    switch (material.held_as) {
        case HeldAs::mass: return static_cast<double>(base) / 1e3;
        case HeldAs::volume:
            if (!material.density) return std::nullopt;
            return static_cast<double>(base) / 1e3 * number(*material.density);
        case HeldAs::count: return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace dyestead
