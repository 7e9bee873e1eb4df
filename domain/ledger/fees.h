// fees.h - what did it cost to be paid, and how much was taken? The three parts of a fee are kept
// apart, for a share of the takings grows with the price and the rest does not.
#pragma once

#include "domain/facts/shop.h"

namespace dyestead {

struct Fees {
    Money share;     // of the takings
    Money payments;  // so much a payment
    Money bags;      // so much a bar
    Money total() const { return share + payments + bags; }
};

// Cash found in the tin less the float put in, and card takings; 0 where not counted.
Money cash_takings(const Fair& fair);
Money card_takings(const Fair& fair);

// What a fair's customers were let off the prices: reductions, and what bundles of bars cost less than
// those bars at the mean price of what was sold. `at_prices`: what all bars sold would have brought.
Money let_off(const Shop& shop, const Fair& fair, Money at_prices, std::int64_t bars);

// `bars`: sold, in thousandths.
Fees fees_of(const Shop& shop, const Fair& fair, std::int64_t bars);
// What a shop keeps of bars sold there.
Fees fees_of(const OutAtShop& out, std::int64_t bars);
// `takings`: with the postage the buyer paid.
Fees fees_of(const Shop& shop, const Sale& sale, Money takings, std::int64_t bars);

}  // namespace dyestead
