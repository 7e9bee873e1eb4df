#include "domain/decisions/price_for_shops.h"

#include "domain/decisions/window.h"
#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

// Of the newest wholesale sale in the last 12 months; of several lines of it, the last.
std::optional<Money> last_sold_for(const Records& records, Key<Material> bar) {
    const Window year = months_to(records.ledger.as_of, 12);
    std::optional<Money> price;
    Day newest{};
    for (const SaleLine& line : records.shop.all<SaleLine>()) {
        if (line.bar != bar || line.bars <= 0) continue;
        const Sale* sale = records.shop.find(line.head);
        if (sale == nullptr || sale->channel != Channel::wholesale || !year.contains(sale->date)) continue;
        if (price && sale->date < newest) continue;
        price = line.price;
        newest = sale->date;
    }
    return price;
}

}  // namespace

PriceTerms wholesale_terms(const Shop& shop, Day day) {
    PriceTerms terms;
    terms.sales_tax = number(sales_tax_in_force(shop, day));
    const ChannelFee* fee = fee_in_force(shop, Channel::wholesale, day);
    if (fee != nullptr && fee->share) terms.fee_share = number(*fee->share);
    if (fee != nullptr && fee->per_bar) terms.fee_per_bar = number(*fee->per_bar);
    return terms;
}

Wholesale price_for_shops(const Records& records, const BarPrice& bar, const PriceTerms& terms) {
    Wholesale result;
    const WholesalePrice* listed = wholesale_price_in_force(records.shop, bar.bar, records.ledger.as_of);
    const auto price = listed != nullptr ? std::optional{listed->price} : last_sold_for(records, bar.bar);
    if (price) result.price = number(*price);
    result.listed = listed != nullptr;
    if (!bar.replacement) return result;
    result.floor = floor_price(terms, bar.replacement->materials);
    result.full_cost = price_for_margin(terms, bar.replacement->full(), 0);
    if (result.price) result.left = terms.kept(*result.price) - bar.replacement->without_labour();
    return result;
}

}  // namespace dyestead
