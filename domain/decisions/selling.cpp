#include "domain/decisions/selling.h"

#include <algorithm>
#include <map>

#include "domain/ledger/in_force.h"
#include "domain/ledger/takings.h"

namespace dyestead {
namespace {

bool stood(const Records& records, const Fair& fair, Window days) {
    return fair.ended == FairEnded::as_usual && fair.date <= records.ledger.as_of && days.contains(fair.date);
}

Fees operator+(const Fees& a, const Fees& b) {
    return {a.share + b.share, a.payments + b.payments, a.bags + b.bags};
}
Fees operator-(const Fees& a, const Fees& b) {
    return {a.share - b.share, a.payments - b.payments, a.bags - b.bags};
}

// The sale that somebody's time went to.
std::optional<Key<Sale>> packed(const Records& records, const Movement& movement) {
    if (const Sale* sale = records.from<Sale>(movement)) return sale->key;
    const SittingAt* sat = records.from<SittingAt>(movement);
    return sat == nullptr ? std::nullopt : sat->sale;
}

// What of selling in those days was for powder and not for bars: its part of the postage, fees and packing.
Cost spent_on_powder(const Records& records, Window days) {
    Cost spent;
    if (records.ledger.powder_sold.empty()) return spent;
    std::map<Key<Sale>, Taking> with_powder;
    for (const Taking& each : takings(records.shop, records.ledger, Period::up_to(records.ledger.as_of)))
        if (each.for_powder) with_powder.emplace(Key<Sale>{each.fact.key}, each);
    for (const auto& [key, taking] : with_powder) {
        if (!days.contains(taking.day)) continue;
        spent.overhead += taking.of_powder(records.shop.find(key)->postage.value_or(Money{}));
        spent.overhead += taking.of_powder(taking.fees).total();
    }
    for (const Movement& movement : records.ledger.movements) {
        const bool time = movement.to == account(Boundary::selling) && movement.from != account(Boundary::bills);
        if (!time || !days.contains(movement.on())) continue;
        const auto sale = packed(records, movement);
        const auto taking = sale ? with_powder.find(*sale) : with_powder.end();
        if (taking != with_powder.end()) spent += taking->second.of_powder(movement.cost);
    }
    return spent;
}

void fees_from_settings(const Records& records, Selling& result) {
    const Day day = records.ledger.as_of;
    const ChannelFee* card = fee_in_force(records.shop, Channel::card, day);
    const ChannelFee* cash = fee_in_force(records.shop, Channel::cash, day);
    if (card != nullptr && card->share) result.fee_share = number(*card->share);
    if (card != nullptr && card->per_payment) result.fee_per_bar += number(*card->per_payment);
    if (cash != nullptr && cash->per_bar)
        result.fee_per_bar += number(*cash->per_bar);
    else if (card != nullptr && card->per_bar)
        result.fee_per_bar += number(*card->per_bar);
}

}  // namespace

Selling selling(const Records& records, Window days) {
    // Where a tin was counted, what was in it; else what the bars should have brought. Refunds count
    // against the takings, and what buyers pay for postage against the postage. What powder brought and took is left
    // out: all of this is told for each bar.
    Fees fees;
    Money paid;
    Money postage;
    std::int64_t bars = 0;
    for (const Taking& each : takings(records.shop, records.ledger, {days.first, days.last})) {
        fees = fees + each.fees - each.of_powder(each.fees);
        paid += each.gross - each.of_powder(each.gross);
        postage += each.postage - each.of_powder(each.postage);
        bars += each.bars;
    }

    Selling result;
    result.bars = static_cast<double>(bars) / 1000;
    result.takings = number(paid - postage);
    if (bars <= 0) {
        fees_from_settings(records, result);
        return result;
    }
    if (paid > Money{}) result.fee_share = number(fees.share) / number(paid);
    result.fee_per_bar = number(fees.payments + fees.bags) / result.bars;

    Cost spent = -spent_on_powder(records, days);
    for (const Movement& movement : records.ledger.movements)
        if (movement.to == account(Boundary::selling) && days.contains(movement.on())) spent += movement.cost;
    result.cost_per_bar = number(spent.cash() - fees.total() - postage) / result.bars;
    result.minutes_per_bar = number(spent.hands_on) / result.bars;
    return result;
}

double bars_sold(const Records& records, Key<Material> bar, Window days) {
    std::int64_t thousandths = 0;
    const auto counts = [&](const auto& line) {
        return days.contains(line.day) && records.shop.all<Material>()[line.material].key == bar;
    };
    for (const SoldLine& line : records.ledger.sold)
        if (counts(line)) thousandths += line.bars;
    for (const ReturnedLine& line : records.ledger.returned)
        if (counts(line)) thousandths -= line.bars;
    return static_cast<double>(thousandths) / 1e3;
}

FairsStood fairs_stood(const Records& records, Window days) {
    FairsStood result;
    for (const Fair& fair : records.shop.all<Fair>()) {
        if (!stood(records, fair, days)) continue;
        ++result.fairs;
        if (std::ranges::any_of(records.shop.all<FairLine>(),
                                [&](const FairLine& line) { return line.head == fair.key && line.back > 0; }))
            ++result.with_bars_back;
    }
    return result;
}

std::optional<double> share_sold(const Records& records, Key<Material> bar, Window days) {
    int taken = 0;
    int sold = 0;
    for (const FairLine& line : records.shop.all<FairLine>()) {
        const Fair* fair = records.shop.find(line.head);
        if (line.bar != bar || fair == nullptr || !stood(records, *fair, days)) continue;
        taken += line.taken;
        sold += std::max(0, line.taken - line.back);
    }
    if (taken <= 0) return std::nullopt;
    return static_cast<double>(sold) / taken;
}

}  // namespace dyestead
