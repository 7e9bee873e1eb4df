#include "domain/decisions/bar_prices.h"

#include "domain/decisions/base_loaf.h"
#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

ShelfPrice listed_or_believed(const Shop& shop, const RecipeColouring* colouring, const PriceBelief* belief,
                              std::optional<Money> PriceBelief::*believed, Day day) {
    if (colouring != nullptr)
        if (const auto listed = shelf_price_in_force(shop, colouring->bar, day))
            return {number(*listed), PriceFrom::price_list};
    if (belief != nullptr && belief->*believed) return {number(*(belief->*believed)), PriceFrom::belief};
    return {};
}

struct Bought {
    Money paid;
    double grams = 0;
    LandedPrice price(BoughtPriceFrom from) const {
        if (grams <= 0) return {};
        return {number(paid) / grams, from};
    }
};

}  // namespace

ShelfPrices shelf_prices(const Shop& shop, Key<Recipe> recipe, Key<Colour> colour, Day day) {
    const PriceBelief* belief = price_belief_in_force(shop, colour, day);
    const auto price = [&](Colouring colouring, std::optional<Money> PriceBelief::*believed) {
        return listed_or_believed(shop, colouring_of(shop, recipe, colouring, colour), belief, believed, day);
    };
    ShelfPrices prices{price(Colouring::plain, &PriceBelief::plain), price(Colouring::bought, &PriceBelief::bought),
                       price(Colouring::own, &PriceBelief::own)};
    for (ShelfPrice* coloured : {&prices.bought, &prices.own})
        if (!coloured->price && prices.plain.price) *coloured = {prices.plain.price, PriceFrom::plain};
    return prices;
}

LandedPrice landed_price(const Records& records, Key<Material> key, Window days) {
    const Material* material = records.shop.find(key);
    if (material == nullptr) return {};
    Bought in_window;
    Bought last;  // all of the last day before the window on which some came
    Bought already_here;
    Day last_day{};
    for (const Movement& movement : records.ledger.movements) {
        const bool delivered = movement.from == account(Boundary::delivered);
        if (!delivered && movement.from != account(Boundary::already_here)) continue;
        if (records.kind(movement.to) != AccountKind::lot || records.lot(movement.to).material != key) continue;
        Bought* bought = &already_here;
        if (delivered && days.contains(movement.on()))
            bought = &in_window;
        else if (delivered) {
            // A later word on the cost comes without goods.
            if (movement.quantity != 0 && movement.on() != last_day) last = {};
            if (movement.quantity != 0) last_day = movement.on();
            bought = &last;
        }
        bought->paid += movement.cost.cash();
        bought->grams += grams(*material, movement.quantity).value_or(0);
    }
    if (const auto price = in_window.price(BoughtPriceFrom::deliveries_in_window); price.per_gram) return price;
    if (const auto price = last.price(BoughtPriceFrom::last_delivery); price.per_gram) return price;
    if (const auto price = already_here.price(BoughtPriceFrom::already_here);
        price.per_gram && !already_here.paid.is_zero())
        return price;

    const Offer* offer = nullptr;
    for (const Offer& each : records.shop.all<Offer>())
        if (each.material == key && each.noted <= days.last && each.from <= days.last &&
            (offer == nullptr || each.from >= offer->from))
            offer = &each;
    if (offer == nullptr) return {};
    const auto pack = as_held(*material, offer->pack);
    if (!pack) return {};
    return Bought{offer->price, grams(*material, pack->in_base()).value_or(0)}.price(BoughtPriceFrom::offer);
}

}  // namespace dyestead
