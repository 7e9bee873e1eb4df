#include "domain/ledger/follow_earned.h"

#include <algorithm>
#include <iterator>

#include "domain/ledger/earned.h"
#include "domain/ledger/follow.h"
#include "domain/ledger/taken_up.h"
#include "domain/values/cost_parts.h"

namespace dyestead {
namespace {

using Leaves = std::vector<Leaf>;

void add(Leaves& to, Leaves what) {
    std::ranges::move(what, std::back_inserter(to));
}

void take_off(Leaves& from, Leaves what) {
    for (Leaf& leaf : what) leaf.cost = -leaf.cost;
    add(from, std::move(what));
}

template <class Amount>
Leaves of_takings(const Shop& shop, const Ledger& ledger, Period period, const Amount& amount) {
    Leaves leaves;
    for (const Taking& each : takings(shop, ledger, period))
        if (const Money money = amount(each); !money.is_zero())
            leaves.push_back({each.fact, Boundary::sold, cost_of_materials(money)});
    return leaves;
}

// `whole` over the cuts in proportion to what each weighs; the last one takes the rest.
template <class Weight>
Leaves over_the_cuts(const std::vector<TakenUp>& cuts, Money whole, const Weight& weight) {
    std::int64_t left = 0;
    for (const TakenUp& each : cuts) left += weight(each).in_millionths();
    std::int64_t rest = whole.in_millionths();
    Leaves leaves;
    for (const TakenUp& each : cuts) {
        const std::int64_t own = weight(each).in_millionths();
        if (own <= 0 || rest == 0) continue;
        const std::int64_t part = share_of(rest, own, left);
        rest -= part;
        left -= own;
        leaves.push_back({each.fact, Boundary::overhead, cost_of_overhead(Money::millionths(part))});
    }
    return leaves;
}

Leaves absorbed(const Shop& shop, const Ledger& ledger, Period period) {
    Leaves leaves;
    for (const TakenUp& each : taken_up(shop, ledger, period))
        leaves.push_back({each.fact, Boundary::overhead, cost_of_overhead(each.overhead)});
    return leaves;
}

Leaves over_absorbed(const Shop& shop, const Ledger& ledger, Period period, bool in_stock) {
    const Earned year = earned(shop, ledger, period);
    const auto cuts = taken_up(shop, ledger, period);
    if (in_stock)
        return over_the_cuts(cuts, year.over_absorbed_in_stock, [](const TakenUp& each) { return each.still; });
    return over_the_cuts(
        cuts, year.over_absorbed_in_sales, [](const TakenUp& each) { return each.overhead - each.still; });
}

Leaves overhead_accrued_by(const Shop& shop, Period period) {
    Leaves leaves = accrued(shop, period);
    std::erase_if(leaves, [](const Leaf& leaf) { return leaf.through != Boundary::overhead; });
    return leaves;
}

Leaves gross_margin(const Shop& shop, const Ledger& ledger, Period period) {
    Leaves leaves = follow(shop, ledger, EarnedPart::net_takings, period);
    take_off(leaves, follow(shop, ledger, Term::sold, period));
    return leaves;
}

Leaves all_earned(const Shop& shop, const Ledger& ledger, Period period) {
    Leaves leaves = gross_margin(shop, ledger, period);
    for (std::size_t i = 0; i < kLossKinds; ++i)
        take_off(leaves, follow(shop, ledger, static_cast<LossKind>(i), period));
    for (Account each = 0; each < kBoundaries; ++each) {
        const auto boundary = static_cast<Boundary>(each);
        if (term_of(boundary) == Term::period && boundary != Boundary::overhead)
            take_off(leaves, follow(shop, ledger, boundary, period));
    }
    take_off(leaves, follow(shop, ledger, EarnedPart::under_absorbed, period));
    add(leaves, follow(shop, ledger, EarnedPart::over_absorbed_in_sales, period));
    return leaves;
}

}  // namespace

std::vector<Leaf> follow(const Shop& shop, const Ledger& ledger, EarnedPart part, Period period) {
    switch (part) {
        case EarnedPart::takings:
            return of_takings(shop, ledger, period, [](const Taking& each) { return each.gross; });
        case EarnedPart::sales_tax:
            return of_takings(shop, ledger, period, [](const Taking& each) { return each.tax; });
        case EarnedPart::net_takings:
            return of_takings(shop, ledger, period, [](const Taking& each) { return each.net(); });
        case EarnedPart::tin_difference:
            return of_takings(shop, ledger, period, [](const Taking& each) { return each.gross - each.asked(); });
        case EarnedPart::overhead_accrued: return overhead_accrued_by(shop, period);
        case EarnedPart::overhead_absorbed: return absorbed(shop, ledger, period);
        case EarnedPart::under_absorbed: {
            if (earned(shop, ledger, period).under_absorbed().is_zero()) return {};
            Leaves leaves = overhead_accrued_by(shop, period);
            take_off(leaves, absorbed(shop, ledger, period));
            return leaves;
        }
        case EarnedPart::over_absorbed_in_stock: return over_absorbed(shop, ledger, period, true);
        case EarnedPart::over_absorbed_in_sales: return over_absorbed(shop, ledger, period, false);
        case EarnedPart::gross_margin: return gross_margin(shop, ledger, period);
        case EarnedPart::earned: return all_earned(shop, ledger, period);
    }
    return {};
}

}  // namespace dyestead
