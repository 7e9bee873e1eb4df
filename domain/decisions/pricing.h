// pricing.h - at which shelf price does a bar bring in what it should?
//
// Customers pay the shelf price; the shop keeps k = 1/(1+t) - f of it, less so much a bar, for sales tax t and
// fees that are a share f of the price. Costs are those of making the bar again today. Doubles: a price is a
// decision, not a booking; money in currency units a bar.
#pragma once

#include <optional>

namespace dyestead {

struct PriceTerms {
    double sales_tax = 0;    // t   0.2 for 20 %; 0 while the shop is not registered
    double fee_share = 0;    // f   of the shelf price
    double fee_per_bar = 0;  // phi by the payment and by the bag

    double kept_share() const { return 1 / (1 + sales_tax) - fee_share; }  // k
    // What is left of a shelf price after sales tax and fees.
    double kept(double shelf) const { return kept_share() * shelf - fee_per_bar; }
};

// The lowest price at which `cost` comes back: what making and selling one more takes, without own labour.
// All four: nothing where no price is high enough, because tax and fees take as much as they add.
std::optional<double> floor_price(const PriceTerms& terms, double cost);
// Margin is a share of the net price: (cost + phi) / ((1 - margin)/(1+t) - f).
std::optional<double> price_for_margin(const PriceTerms& terms, double cost, double margin);
// Markup is a share of the cost: ((1 + markup) cost + phi) / k.
std::optional<double> price_for_markup(const PriceTerms& terms, double cost, double markup);
// (cost without labour + W H + phi) / k for W an hour and H hours in the bar, selling time in.
std::optional<double> price_for_hour(const PriceTerms& terms, double cost_without_labour, double hours,
                                     double per_hour);

// Margin on the net price that a shelf price leaves over a cost, fees in; nothing for a price of nought.
std::optional<double> margin_at(const PriceTerms& terms, double shelf, double cost);

// The next price on a ladder of points so far apart (0.50); a price already on it stays. A step of 0: as it is.
double up_to_point(double price, double step);

}  // namespace dyestead
