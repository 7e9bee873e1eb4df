#include "domain/ledger/earned.h"

#include <algorithm>

#include "domain/ledger/in_force.h"
#include "domain/ledger/taken_up.h"
#include "domain/ledger/terms.h"

namespace dyestead {
namespace {

void add_takings(const Shop& shop, const Ledger& ledger, Earned& result) {
    for (const Taking& each : takings(shop, ledger, result.period)) {
        result.gross += each.gross;
        result.tax += each.tax;
        result.tin_difference += each.gross - each.asked();
        result.bars += each.bars;
        result.payment_fees += each.fees.total();
    }
    const auto then = [&](Day day) { return result.period.contains(day); };
    for (const Fair& fair : shop.all<Fair>()) {
        if (!then(fair.date)) continue;
        result.stalls += fair.fee;
        result.travel += fair.travel.value_or(Money{});
    }
    for (const Sale& sale : shop.all<Sale>())
        if (then(sale.date)) result.postage += sale.postage.value_or(Money{});
}

}  // namespace

Cost Earned::lost() const {
    Cost sum;
    for (std::size_t kind = 0; kind < kLossKinds; ++kind)
        if (!is_gift(static_cast<LossKind>(kind))) sum += losses[kind];
    return sum;
}

Cost Earned::given() const {
    Cost sum;
    for (std::size_t kind = 0; kind < kLossKinds; ++kind)
        if (is_gift(static_cast<LossKind>(kind))) sum += losses[kind];
    return sum;
}

Money Earned::under_absorbed() const {
    return std::max(Money{}, overhead_accrued - overhead_absorbed);
}

Cost Earned::spent() const {
    Cost sum = cost_of_sales + lost() + given() + selling;
    for (const PeriodCost& each : period_costs) sum += each.cost;
    sum.overhead += under_absorbed() - over_absorbed_in_sales;
    return sum;
}

Earned earned(const Shop& shop, const Ledger& ledger, Period period) {
    Earned result;
    result.period = period;
    add_takings(shop, ledger, result);
    for (const LossLine& line : losses(shop, ledger, period))
        result.losses[static_cast<std::size_t>(line.kind)] += line.cost;

    std::vector<Cost> grown = balances_at(ledger, period.last);
    const std::vector<Cost> before = balances_at(ledger, period.before());
    for (std::size_t i = 0; i < grown.size(); ++i) grown[i] -= before[i];
    result.cost_of_sales = grown[account(Boundary::sold)];
    result.selling = grown[account(Boundary::selling)];
    for (Account each = 0; each < kBoundaries; ++each) {
        const auto boundary = static_cast<Boundary>(each);
        const bool its_own_line = boundary == Boundary::selling || boundary == Boundary::overhead;
        if (boundary == Boundary::dye_sunk)
            grown[each].overhead += dye_wear_accrued(shop, period.last) - dye_wear_accrued(shop, period.before());
        if (term_of(boundary) == Term::period && !its_own_line) result.period_costs.push_back({boundary, grown[each]});
    }
    result.overhead_accrued = overhead_accrued(shop, period.last) - overhead_accrued(shop, period.before());
    result.overhead_absorbed = -grown[account(Boundary::overhead)].overhead;
    const Money over = result.overhead_absorbed - result.overhead_accrued;
    if (over > Money{} && result.overhead_absorbed > Money{}) {
        Money still;
        for (const TakenUp& each : taken_up(shop, ledger, period)) still += each.still;
        result.over_absorbed_in_stock = Money::millionths(
            share_of(over.in_millionths(), still.in_millionths(), result.overhead_absorbed.in_millionths()));
        result.over_absorbed_in_sales = over - result.over_absorbed_in_stock;
    }
    return result;
}

}  // namespace dyestead
