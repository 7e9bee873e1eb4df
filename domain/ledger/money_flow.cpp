#include "domain/ledger/money_flow.h"

#include "domain/ledger/bill.h"

namespace dyestead {
namespace {

template <class Each, std::size_t Size>
Money& at(std::array<Money, Size>& all, Each each) {
    return all[static_cast<std::size_t>(each)];
}

}  // namespace

Money MoneyFlow::total_in() const {
    Money sum;
    for (const Money& each : in) sum += each;
    return sum;
}

Money MoneyFlow::total_out() const {
    Money sum;
    for (const Money& each : out) sum += each;
    return sum;
}

MoneyFlow money_flow(const Shop& shop, const Ledger& ledger, Period period) {
    MoneyFlow flow;
    flow.period = period;
    for (const Taking& each : takings(shop, ledger, period)) {
        at(flow.in, each.at) += each.gross - each.card;
        at(flow.in, TakenAt::fair_card) += each.card;
        at(flow.out, PaidFor::payment_fees) += each.fees.total();
    }
    const LinesOf<DeliveryLine> lines{shop};
    for (const Delivery& each : shop.all<Delivery>())
        if (period.contains(each.date)) {
            const Bill bill = bill_of(shop, each, lines(each.key));
            at(flow.out, PaidFor::carriage) += bill.carriage;
            at(flow.out, PaidFor::goods) += bill.duty - bill.discount;
            for (const BillLine& line : bill.lines) at(flow.out, PaidFor::goods) += line.price + line.tax;
        }
    for (const CostCorrection& each : shop.all<CostCorrection>())
        if (period.contains(each.date)) at(flow.out, PaidFor::goods) += signed_amount(each);
    for (const Fair& each : shop.all<Fair>()) {
        if (period.contains(each.fee_paid.value_or(each.date))) at(flow.out, PaidFor::stalls) += each.fee;
        if (period.contains(each.date)) at(flow.out, PaidFor::travel) += each.travel.value_or(Money{});
    }
    for (const Sale& each : shop.all<Sale>())
        if (period.contains(each.date)) at(flow.out, PaidFor::postage) += each.postage.value_or(Money{});
    for (const PaidOut& each : shop.all<PaidOut>())
        if (period.contains(each.date)) at(flow.out, PaidFor::bills) += each.amount;
    for (const Movement& movement : ledger.movements) {
        if (!period.contains(movement.on())) continue;
        if (movement.from == account(Boundary::wages)) at(flow.out, PaidFor::wages) += movement.cost.materials;
        if (movement.from == account(Boundary::energy)) at(flow.out, PaidFor::energy) += movement.cost.energy;
    }
    return flow;
}

}  // namespace dyestead
