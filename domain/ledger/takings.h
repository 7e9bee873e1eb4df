// takings.h - what did customers pay in a period, where, and with how much sales tax in it?
#pragma once

#include <optional>

#include "domain/ledger/fees.h"
#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"

namespace dyestead {

enum class TakenAt : std::uint8_t {
    fair_cash,
    fair_card,
    fair_not_counted,
    cash,
    card,
    online,
    wholesale,
    at_shop,   // bars that were out at a shop, at what its customers paid
    refunded,  // to customers who brought bars back: below nought
    other,
};
inline constexpr std::size_t kTakenAt = static_cast<std::size_t>(TakenAt::other) + 1;

// One fair, sale, settling with a shop or return.
struct Taking {
    FactRef fact;
    Day day{};
    std::int64_t bars = 0;  // thousandths
    Money by_price;         // bars times what was asked for each
    // Asked for powder that was sold as it is, beside the bars or alone. Empty: none was.
    std::optional<Money> for_powder;
    Money let_off;  // at a fair: reductions and bundles
    Money postage;  // that the buyer paid beside the bars
    // What came in. At a fair whose tin was counted: what was in it and the card takings; elsewhere the
    // bars at their prices, less what was let off, with postage.
    Money cash;   // at a fair
    Money card;   // at a fair
    Money gross;  // all of it
    Money tax;    // sales tax inside gross, at the rate in force that day
    Fees fees;
    TakenAt at{};  // of a fair: fair_not_counted or fair_cash, whose card takings stand in `card`

    Money net() const { return gross - tax; }
    // What should have come in.
    Money asked() const { return by_price + for_powder.value_or(Money{}) - let_off + postage; }

    // What of a sum for all of the sale (what came in, its postage, its packing) falls on the powder in it, so that
    // what is told for each bar is told of bars alone: by what was asked for powder and for bars. Where nothing was
    // asked for either, on the bars, and on the powder where there were none.
    Cost of_powder(const Cost& of_all) const;
    Money of_powder(Money of_all) const;
    // Bags go with bars.
    Fees of_powder(const Fees& of_all) const;
};

// In order of the day.
std::vector<Taking> takings(const Shop& shop, const Ledger& ledger, Period period);

// The sales tax inside a price that was paid, rounded half away from zero.
Money tax_inside(Money gross, Ratio rate);

}  // namespace dyestead
