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

std::vector<MoneyLine> money_lines(const Shop& shop, const Ledger& ledger, Period period) {
    std::vector<MoneyLine> all;
    const auto add = [&](FactRef fact, std::variant<TakenAt, PaidFor> what, Money amount) {
        if (!amount.is_zero()) all.push_back({fact, what, amount});
    };
    for (const Taking& each : takings(shop, ledger, period)) {
        add(each.fact, each.at, each.gross - each.card);
        add(each.fact, TakenAt::fair_card, each.card);
        add(each.fact, PaidFor::payment_fees, each.fees.total());
    }
    const LinesOf<DeliveryLine> lines{shop};
    for (const Delivery& each : shop.all<Delivery>()) {
        if (!period.contains(each.date)) continue;
        const auto came = lines(each.key);
        const Bill bill = bill_of(shop, each, came);
        add(ref(each), PaidFor::carriage, bill.carriage);
        add(ref(each), PaidFor::goods, bill.duty - bill.discount);
        for (std::size_t i = 0; i < came.size(); ++i)
            add(ref(*came[i]), PaidFor::goods, bill.lines[i].price + bill.lines[i].tax);
    }
    for (const CostCorrection& each : shop.all<CostCorrection>())
        if (period.contains(each.date)) add(ref(each), PaidFor::goods, signed_amount(each));
    for (const Fair& each : shop.all<Fair>()) {
        if (period.contains(each.fee_paid.value_or(each.date))) add(ref(each), PaidFor::stalls, each.fee);
        if (period.contains(each.date)) add(ref(each), PaidFor::travel, each.travel.value_or(Money{}));
    }
    for (const Sale& each : shop.all<Sale>())
        if (period.contains(each.date)) add(ref(each), PaidFor::postage, each.postage.value_or(Money{}));
    for (const PaidOut& each : shop.all<PaidOut>())
        if (period.contains(each.date)) add(ref(each), PaidFor::bills, each.amount);
    for (const Movement& movement : ledger.movements) {
        if (!period.contains(movement.on())) continue;
        const FactRef fact = ledger.sources[movement.source].fact;
        if (movement.from == account(Boundary::wages)) add(fact, PaidFor::wages, movement.cost.materials);
        if (movement.from == account(Boundary::energy)) add(fact, PaidFor::energy, movement.cost.energy);
    }
    return all;
}

MoneyFlow money_flow(const Shop& shop, const Ledger& ledger, Period period) {
    MoneyFlow flow;
    flow.period = period;
    for (const MoneyLine& line : money_lines(shop, ledger, period)) {
        if (const auto* in = std::get_if<TakenAt>(&line.what))
            at(flow.in, *in) += line.amount;
        else
            at(flow.out, std::get<PaidFor>(line.what)) += line.amount;
    }
    return flow;
}

}  // namespace dyestead
