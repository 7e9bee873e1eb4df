#include "domain/ledger/price_to_buy.h"

#include "domain/facts/material_amount.h"

namespace dyestead {
namespace {

std::optional<Rate> rate(const Material& material, Money price, const Amount& amount) {
    try {
        const auto held = as_held(material, amount);
        if (held && held->in_base() > 0) return Rate{price, *held};
    } catch (const Overflow&) {
        // No amount that anyone could have bought.
    }
    return std::nullopt;
}

}  // namespace

std::optional<Rate> price_to_buy(const Shop& shop, const Material& material, Day day) {
    std::optional<Rate> price;
    Day since{};
    for (const Offer& each : shop.all<Offer>()) {
        if (each.material != material.key || each.noted > day || each.from > day) continue;
        const auto offered = rate(material, each.price, each.pack);
        if (!offered || (price && each.from < since)) continue;
        price = offered;
        since = each.from;
    }
    if (price) return price;
    for (const DeliveryLine& line : shop.all<DeliveryLine>()) {
        const Lot* lot = shop.find(line.lot);
        const Delivery* delivery = shop.find(line.head);
        if (lot == nullptr || delivery == nullptr || lot->material != material.key || delivery->date > day) continue;
        const auto paid = rate(material, line.price, line.amount);
        if (!paid || (price && delivery->date < since)) continue;
        price = paid;
        since = delivery->date;
    }
    return price;
}

}  // namespace dyestead
