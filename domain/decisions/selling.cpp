#include "domain/decisions/selling.h"

#include <algorithm>
#include <map>

#include "domain/ledger/fees.h"
#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

struct Sold {
    std::int64_t bars = 0;  // thousandths
    Money takings;
};

Sold& operator+=(Sold& sum, const SoldLine& line) {
    sum.bars += line.bars;
    if (line.price) sum.takings += Rate{*line.price, Quantity::pieces(1)} * Quantity{Kind::count, line.bars};
    return sum;
}

bool stood(const Records& records, const Fair& fair, Window days) {
    return fair.ended == FairEnded::as_usual && fair.date <= records.ledger.as_of && days.contains(fair.date);
}

Fees operator+(const Fees& a, const Fees& b) {
    return {a.share + b.share, a.payments + b.payments, a.bags + b.bags};
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
    std::map<Key<Fair>, Sold> at_fairs;
    std::map<Key<Sale>, Sold> by_sale;
    for (const SoldLine& line : records.ledger.sold) {
        if (!days.contains(line.day)) continue;
        if (line.fact.kind == kKindOf<FairLine>) {
            const FairLine* fact = records.shop.find(Key<FairLine>{line.fact.key});
            if (fact != nullptr) at_fairs[fact->head] += line;
        } else {
            const SaleLine* fact = records.shop.find(Key<SaleLine>{line.fact.key});
            if (fact != nullptr) by_sale[fact->head] += line;
        }
    }

    Fees fees;
    Sold all;
    for (const Fair& fair : records.shop.all<Fair>()) {
        if (!days.contains(fair.date)) continue;
        const Sold sold = at_fairs[fair.key];
        fees = fees + fees_of(records.shop, fair, sold.bars);
        all.bars += sold.bars;
        // Where the tin was counted, what was in it; else what the bars should have brought.
        all.takings += fair.cash_in_tin ? cash_takings(fair) + card_takings(fair) : sold.takings;
    }
    for (const auto& [key, sold] : by_sale) {
        const Sale* sale = records.shop.find(key);
        if (sale == nullptr) continue;
        fees = fees + fees_of(records.shop, *sale, sold.takings, sold.bars);
        all.bars += sold.bars;
        all.takings += sold.takings;
    }

    Selling result;
    result.bars = static_cast<double>(all.bars) / 1000;
    result.takings = number(all.takings);
    if (all.bars <= 0) {
        fees_from_settings(records, result);
        return result;
    }
    if (result.takings > 0) result.fee_share = number(fees.share) / result.takings;
    result.fee_per_bar = number(fees.payments + fees.bags) / result.bars;

    Cost spent;
    for (const Movement& movement : records.ledger.movements)
        if (movement.to == account(Boundary::selling) && days.contains(movement.on())) spent += movement.cost;
    result.cost_per_bar = number(spent.cash() - fees.total()) / result.bars;
    result.minutes_per_bar = number(spent.hands_on) / result.bars;
    return result;
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
