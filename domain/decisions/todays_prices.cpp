#include "domain/decisions/todays_prices.h"

#include <map>
#include <vector>

#include "domain/facts/lines_of.h"
#include "domain/facts/material_amount.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/latest_price.h"

namespace dyestead {
namespace {

class Repricer {
public:
    Repricer(const Shop& shop, Day day) : was_{shop}, lines_{shop}, now_{shop}, day_{day} {}

    Shop reprice() {
        for (const Delivery& delivery : was_.all<Delivery>())
            if (delivery.date <= day_) reprice(delivery);
        for (AlreadyHere& here : now_.all<AlreadyHere>()) reprice(here);
        for (Offer& offer : now_.all<Offer>())
            if (const auto price = price_of(offer.material, offer.pack)) offer.price = *price;
        std::erase_if(now_.all<CostCorrection>(), [&](const CostCorrection& each) { return each.date <= day_; });
        for (Pay& pay : now_.all<Pay>()) reprice(pay);
        for (Tariff& tariff : now_.all<Tariff>()) {
            const auto today = tariff_in_force(was_, tariff.source, day_);
            if (tariff.from <= day_ && today) tariff.per_kwh = today->amount;
        }
        return std::move(now_);
    }

private:
    // Lines are priced in the shop's own currency, tax in; what a line's price cannot be found for stays on the bill
    // as it was, so its currency must stay with it.
    void reprice(const Delivery& was) {
        const auto lines = lines_(was);
        prices_.clear();
        for (const DeliveryLine* line : lines) {
            const auto price = price_of(*line);
            if (!price) return;
            prices_.push_back(*price);
        }
        Delivery& delivery = in_now(was);
        delivery.carriage = Money{};
        delivery.duty.reset();
        delivery.discount.reset();
        delivery.currency.reset();
        delivery.rate.reset();
        for (std::size_t i = 0; i < lines.size(); ++i) {
            DeliveryLine& line = in_now(*lines[i]);
            line.price = prices_[i];
            line.tax.reset();
        }
    }

    // The copy of a fact.
    template <class Fact>
    Fact& in_now(const Fact& was) {
        return now_.all<Fact>()[static_cast<std::size_t>(&was - was_.all<Fact>().data())];
    }

    void reprice(AlreadyHere& here) {
        const Lot* lot = was_.find(here.lot);
        if (here.date > day_ || lot == nullptr) return;
        if (const auto price = price_of(lot->material, here.amount)) here.cost = price;
    }

    // Somebody who has since become one of the shop's own, or paid, was the other then.
    void reprice(Pay& pay) {
        const Pay* today = pay_in_force(was_, pay.person, day_);
        if (today != nullptr && pay.from <= day_ && pay.standing == today->standing) pay.per_hour = today->per_hour;
    }

    std::optional<Money> price_of(const DeliveryLine& line) {
        const Lot* lot = was_.find(line.lot);
        return lot == nullptr ? std::nullopt : price_of(lot->material, line.amount);
    }

    std::optional<Money> price_of(Key<Material> key, const Amount& amount) {
        const Material* material = was_.find(key);
        if (material == nullptr) return std::nullopt;
        const auto quantity = as_held(*material, amount);
        const auto& rate = rate_of(key);
        if (!quantity || !rate) return std::nullopt;
        try {
            return *rate * *quantity;
        } catch (const Overflow&) {
            return std::nullopt;
        }
    }

    const std::optional<Rate>& rate_of(Key<Material> key) {
        const auto [at, is_new] = rates_.try_emplace(key);
        if (is_new) at->second = latest_price(was_, key, day_);
        return at->second;
    }

    const Shop& was_;
    LinesOf<DeliveryLine> lines_;
    Shop now_;
    Day day_;
    std::map<Key<Material>, std::optional<Rate>> rates_;
    std::vector<Money> prices_;  // of the lines of one delivery
};

}  // namespace

Shop at_prices_of(const Shop& shop, Day day) {
    return Repricer{shop, day}.reprice();
}

}  // namespace dyestead
