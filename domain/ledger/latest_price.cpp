#include "domain/ledger/latest_price.h"

#include "domain/facts/material_amount.h"
#include "domain/ledger/bill.h"

namespace dyestead {
namespace {

std::optional<Rate> rate(const Material& material, Money price, const Amount& amount) {
    const auto quantity = as_held(material, amount);
    if (!quantity || quantity->in_base() <= 0) return std::nullopt;
    return Rate{price, *quantity};
}

}  // namespace

std::optional<Rate> latest_price(const Shop& shop, Key<Material> key, Day day) {
    const Material* material = shop.find(key);
    if (material == nullptr) return std::nullopt;
    const Offer* offer = nullptr;
    for (const Offer& each : shop.all<Offer>())
        if (each.material == key && each.noted <= day && each.from <= day &&
            (offer == nullptr || each.from >= offer->from))
            offer = &each;
    if (offer != nullptr)
        if (const auto found = rate(*material, offer->price, offer->pack)) return found;

    std::optional<Rate> latest;
    Day latest_day{};
    for (const DeliveryLine& line : shop.all<DeliveryLine>()) {
        const Delivery* head = shop.find(line.head);
        const Lot* lot = shop.find(line.lot);
        if (head == nullptr || lot == nullptr || lot->material != key || head->date > day) continue;
        if (latest && head->date < latest_day) continue;
        const DeliveryLine* one = &line;
        const BillLine landed = bill_of(shop, *head, {&one, 1}).lines.front();
        if (const auto found = rate(*material, landed.price + landed.tax, line.amount)) {
            latest = found;
            latest_day = head->date;
        }
    }
    return latest;
}

}  // namespace dyestead
