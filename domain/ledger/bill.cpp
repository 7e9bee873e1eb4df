#include "domain/ledger/bill.h"

#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

std::optional<Ratio> rate_of(const Shop& shop, const Delivery& delivery, bool& unknown) {
    const auto& about = shop.all<About>();
    if (!delivery.currency || (!about.empty() && *delivery.currency == about.front().currency)) return std::nullopt;
    unknown = !delivery.rate || delivery.rate->top <= 0;
    return unknown ? std::nullopt : delivery.rate;
}

}  // namespace

Bill bill_of(const Shop& shop, const Delivery& delivery, std::span<const DeliveryLine* const> lines) {
    Bill bill;
    const std::optional<Ratio> rate = rate_of(shop, delivery, bill.rate_unknown);
    const bool reclaimed = sales_tax_in_force(shop, delivery.date).top > 0;
    const auto multiplied = [&](Money money, const std::optional<Ratio>& by, FactRef fact) {
        if (!by) return money;
        try {
            const Money product = Money::millionths(times(money.in_millionths(), *by));
            if (product <= kLargestStatedMoney) return product;
        } catch (const Overflow&) {  // said below
        }
        bill.too_large.push_back(fact);
        return Money{};
    };
    bill.carriage = multiplied(delivery.carriage, rate, ref(delivery));
    bill.duty = multiplied(delivery.duty.value_or(Money{}), rate, ref(delivery));
    bill.discount = multiplied(delivery.discount.value_or(Money{}), rate, ref(delivery));
    for (const DeliveryLine* line : lines) {
        BillLine landed;
        landed.price = multiplied(line->price, rate, ref(*line));
        if (line->tax && !reclaimed) landed.tax = multiplied(landed.price, line->tax, ref(*line));
        bill.lines.push_back(landed);
    }
    return bill;
}

Money signed_amount(const CostCorrection& correction) {
    return correction.correction == Correction::less ? -correction.amount : correction.amount;
}

}  // namespace dyestead
