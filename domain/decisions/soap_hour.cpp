#include "domain/decisions/soap_hour.h"

#include "domain/decisions/base_loaf.h"
#include "domain/ledger/in_force.h"

namespace dyestead {

SoapHour soap_hour(const Records& records, const Selling& selling, double sales_tax, Window made, Window sold) {
    SoapHour best;
    for (const RecipeColouring& colouring : records.shop.all<RecipeColouring>()) {
        const Recipe* recipe = records.shop.find(colouring.head);
        if (colouring.colouring != Colouring::plain || recipe == nullptr) continue;
        const auto shelf = shelf_price_in_force(records.shop, colouring.bar, records.ledger.as_of);
        const BaseLoaf base = base_loaf(records, *recipe, made);
        if (!shelf || base.good_bars <= 0) continue;
        const double minutes = number(base.cost.hands_on) / base.good_bars + selling.minutes_per_bar.value_or(0);
        if (minutes <= 0) continue;
        const double spent = number(base.cost.materials + base.cost.energy) / base.good_bars;
        const double kept = number(*shelf) / (1 + sales_tax) - selling.fees(number(*shelf)) - spent;
        const auto share = share_sold(records, colouring.bar, sold);
        const double earned = kept / (minutes / 60) * share.value_or(1);
        if (!best.earned || earned > *best.earned) best = {earned, share.has_value()};
    }
    return best;
}

}  // namespace dyestead
