#include "domain/ledger/tie_outs.h"

#include "domain/ledger/hours.h"
#include "domain/ledger/statements.h"
#include "domain/ledger/stock_value.h"
#include "domain/ledger/trace.h"
#include "domain/values/cost_parts.h"

namespace dyestead {
namespace {

Cost labour(Minutes time, Money money) {
    Cost cost;
    cost.labour = money;
    cost.hands_on = time;
    return cost;
}

Cost out_of_stock(const CostPartition& terms) {
    return terms.sold + terms.lost + terms.given + terms.period;
}

Money paid(const MoneyFlow& flow, PaidFor what) {
    return flow.out[static_cast<std::size_t>(what)];
}

// What came out of the accounts of a boundary over the period.
Cost came_in(const Ledger& ledger, Boundary boundary, Period period) {
    Cost sum;
    for (const Movement& movement : ledger.movements)
        if (movement.from == account(boundary) && period.contains(movement.on())) sum += movement.cost;
    return sum;
}

}  // namespace

std::vector<TieOut> tie_outs(const Shop& shop, const Ledger& ledger, Period period) {
    const CostPartition before = cost_partition(shop, ledger, period.before());
    const CostPartition after = cost_partition(shop, ledger, period.last);
    const StockValue stock = stock_value(shop, ledger, period.last);
    const StockValue opening = stock_value(shop, ledger, period.before());
    const Earned year = earned(shop, ledger, period);
    const MoneyFlow flow = money_flow(shop, ledger, period);
    const Cost out = out_of_stock(after) - out_of_stock(before);

    std::vector<TieOut> all;
    all.push_back({Tie::opening_to_closing, opening.stock() + opening.in_progress() + (after.in - before.in) - out,
                   stock.stock() + stock.in_progress()});
    all.push_back({Tie::stock, stock.stock() + stock.in_progress(), after.stock + after.in_progress});
    all.push_back({Tie::cost_of_sales, sum(trace(shop, ledger, Term::sold, period)), after.sold - before.sold});
    all.push_back({Tie::losses, year.lost() + year.given(), after.lost + after.given - before.lost - before.given});
    all.push_back({Tie::earned, year.spent() - cost_of_overhead(year.over_absorbed_in_stock), out});
    Cost logged;
    for (const StageHours& line : hours(shop, ledger, period)) logged += labour(line.time, line.labour);
    Cost entered = came_in(ledger, Boundary::hours, period);
    entered += came_in(ledger, Boundary::already_here, period);
    all.push_back({Tie::hours, logged, labour(entered.hands_on, entered.labour)});
    all.push_back({Tie::money_goods, cost_of_materials(paid(flow, PaidFor::goods) + paid(flow, PaidFor::carriage)),
                   came_in(ledger, Boundary::delivered, period)});
    // A stall's fee stands with the day of the fair, whenever it was paid.
    Money bills =
        year.stalls + paid(flow, PaidFor::travel) + paid(flow, PaidFor::postage) + paid(flow, PaidFor::payment_fees);
    for (const PaidOut& each : shop.all<PaidOut>())
        if (each.dye_only != DyeOnly::no && period.contains(each.date)) bills += each.amount;
    all.push_back({Tie::money_bills, cost_of_overhead(bills), came_in(ledger, Boundary::bills, period)});
    return all;
}

}  // namespace dyestead
