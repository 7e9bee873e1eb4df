#include "domain/decisions/pricing.h"

#include <cmath>

namespace dyestead {
namespace {

// Less than this share kept of a price is nothing kept: the price would have to be a thousand times the cost.
constexpr double kNothingKept = 1e-3;

std::optional<double> over(double money, double share) {
    if (!(share > kNothingKept)) return std::nullopt;
    return money / share;
}

}  // namespace

std::optional<double> floor_price(const PriceTerms& terms, double cost) {
    return over(cost + terms.fee_per_bar, terms.kept_share());
}

std::optional<double> price_for_margin(const PriceTerms& terms, double cost, double margin) {
    return over(cost + terms.fee_per_bar, (1 - margin) / (1 + terms.sales_tax) - terms.fee_share);
}

std::optional<double> price_for_markup(const PriceTerms& terms, double cost, double markup) {
    return over((1 + markup) * cost + terms.fee_per_bar, terms.kept_share());
}

std::optional<double> price_for_hour(const PriceTerms& terms, double cost_without_labour, double hours,
                                     double per_hour) {
    return over(cost_without_labour + per_hour * hours + terms.fee_per_bar, terms.kept_share());
}

std::optional<double> margin_at(const PriceTerms& terms, double shelf, double cost) {
    const double net = shelf / (1 + terms.sales_tax);
    if (!(net > 0)) return std::nullopt;
    return (terms.kept(shelf) - cost) / net;
}

double up_to_point(double price, double step) {
    if (!(step > 0)) return price;
    // A price that is on the ladder but for the last bit of a division stays where it is.
    constexpr double kSlack = 1e-9;
    return std::ceil(price / step - kSlack) * step;
}

}  // namespace dyestead
