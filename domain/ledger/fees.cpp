#include "domain/ledger/fees.h"

#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

Money per_bar(Money each, std::int64_t bars) {
    return Rate{each, Quantity::pieces(1)} * Quantity{Kind::count, bars};
}

Fees fees(const ChannelFee* fee, Money takings, int payments, std::int64_t bars) {
    if (fee == nullptr) return {};
    Fees result;
    if (fee->share) result.share = Money::millionths(times(takings.in_millionths(), *fee->share));
    if (fee->per_payment) result.payments = per_bar(*fee->per_payment, payments * std::int64_t{1000});
    if (fee->per_bar) result.bags = per_bar(*fee->per_bar, bars);
    return result;
}

}  // namespace

Money cash_takings(const Fair& fair) {
    if (!fair.cash_in_tin) return {};
    return *fair.cash_in_tin - fair.change_float.value_or(Money{});
}

Money card_takings(const Fair& fair) {
    return fair.card_takings.value_or(Money{});
}

// Every bar goes home in a bag, however it was paid; the cash channel says what a bag costs, and the
// card channel where cash says nothing.
Fees fees_of(const Shop& shop, const Fair& fair, std::int64_t bars) {
    const ChannelFee* cash = fee_in_force(shop, Channel::cash, fair.date);
    const ChannelFee* card = fee_in_force(shop, Channel::card, fair.date);
    const bool cash_has_bags = cash != nullptr && cash->per_bar.has_value();
    const Fees by_card = fees(card, card_takings(fair), fair.card_payments.value_or(0), cash_has_bags ? 0 : bars);
    const Fees by_cash = fees(cash, cash_takings(fair), 0, bars);
    return {by_card.share + by_cash.share, by_card.payments + by_cash.payments, by_card.bags + by_cash.bags};
}

Money let_off(const Shop& shop, const Fair& fair, Money at_prices, std::int64_t bars) {
    Money sum = fair.reductions.value_or(Money{});
    if (bars <= 0) return sum;
    for (const FairBundle& bundle : shop.all<FairBundle>()) {
        if (bundle.head != fair.key) continue;
        const Money at_price =
            Money::millionths(scaled(at_prices.in_millionths(), std::int64_t{bundle.bars} * 1'000, bars));
        sum += per_bar(at_price - bundle.price, std::int64_t{bundle.sold} * 1'000);
    }
    return sum;
}

Fees fees_of(const OutAtShop& out, std::int64_t bars) {
    Fees result;
    const Money takings = per_bar(out.price, bars);
    if (out.share) result.share = Money::millionths(times(takings.in_millionths(), *out.share));
    return result;
}

Fees fees_of(const Shop& shop, const Sale& sale, Money takings, std::int64_t bars) {
    return fees(fee_in_force(shop, sale.channel, sale.date), takings, 1, bars);
}

}  // namespace dyestead
