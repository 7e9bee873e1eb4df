#include <doctest/doctest.h>

#include "domain/decisions/todays_prices.h"
#include "tests/domain/decisions/blue_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

class LookingAhead : public BlueShop {
public:
    Verdict ahead(Stand stand = Stand::before_sowing) const { return look_ahead(shop(), as_of, blue, stand); }

    void offer_today(Key<Material> material, Amount pack, Money price) {
        offer(day_of(2026, 10, 30), material, pack, price);
    }
    void hour_from_today(Money target) {
        auto& pay = add<Pay>();
        pay.from = as_of;
        pay.person = who;
        pay.per_hour = target;
    }
};

}  // namespace

TEST_CASE("looking ahead, amounts and minutes stay and prices are today's") {
    LookingAhead shop;
    const Verdict back = shop.verdict();
    CHECK_FALSE(back.ahead.has_value());
    shop.offer_today(shop.bought_blue, grams(50), Money::units(25));
    shop.offer_today(shop.soda, grams(500), Money::units(5));
    shop.hour_from_today(Money::units(15));
    auto& tariff = shop.add<Tariff>();
    tariff.from = shop.as_of;
    tariff.per_kwh = Money::hundredths(40);

    const Verdict ahead = shop.ahead();
    CHECK(ahead.ahead == Stand::before_sowing);
    CHECK(*ahead.hourly_target == Approx(15));
    CHECK(*ahead.bought_price_per_gram == Approx(0.50));
    // Seed 2.00 as it was; 100 g of soda at 1.00 a hundred; 4 kWh at 0.40.
    CHECK(ahead.stands_on.dye_cash == Approx(2.00 + 1.00 + 1.60));
    CHECK(*ahead.stands_on.dye_labour == Approx(*back.stands_on.dye_labour / 12 * 15));
    CHECK(ahead.stands_on.grams_dried == back.stands_on.grams_dried);
    CHECK(*ahead.figures.season.dye_hours == *back.figures.season.dye_hours);
    CHECK(*ahead.figures.pigment.yield_g_per_kg == *back.figures.pigment.yield_g_per_kg);
    CHECK(*ahead.figures.pigment.strength == *back.figures.pigment.strength);
    // The same sum by the model and by the two bars.
    CHECK(ahead.figures.home_less_bought->full(15) ==
          Approx(*ahead.figures.home.full_margin_per_bar - *ahead.figures.bought.full_margin_per_bar));
}

TEST_CASE("an offer moves the look ahead only, a delivery the look back only") {
    LookingAhead shop;
    shop.offer_today(shop.bought_blue, grams(50), Money::units(25));
    const Verdict back = shop.verdict();
    const Verdict ahead = shop.ahead();

    LookingAhead dearer = shop;
    dearer.offer_today(shop.bought_blue, grams(50), Money::units(40));
    CHECK(dearer.verdict().figures.home_less_bought->cash == back.figures.home_less_bought->cash);
    CHECK(dearer.ahead().figures.home_less_bought->cash > ahead.figures.home_less_bought->cash);

    for (const DeliveryLine& line : shop.shop().all<DeliveryLine>())
        if (shop.shop().find(line.lot)->material == shop.bought_blue) shop.at(line.key).price = Money::units(60);
    CHECK(shop.verdict().figures.home_less_bought->cash > back.figures.home_less_bought->cash);
    CHECK(shop.ahead().figures.home_less_bought->cash == ahead.figures.home_less_bought->cash);
}

TEST_CASE("what is spent either way does not count from where one stands") {
    LookingAhead shop;
    shop.bill(day_of(2026, 6, 1), Money::units(8), DyeOnly::garden, {1, 1});
    const Verdict sowing = shop.ahead(Stand::before_sowing);
    const Verdict standing = shop.ahead(Stand::leaf_standing);
    const Verdict dry = shop.ahead(Stand::pigment_dry);

    CHECK(sowing.figures.model->garden_cash_per_kg > 0);
    CHECK(standing.figures.model->garden_cash_per_kg == 0);
    CHECK(standing.figures.model->garden_minutes_per_kg == 0);
    CHECK(standing.figures.model->minutes_per_vat() == Approx(sowing.figures.model->minutes_per_vat()));
    CHECK(standing.stands_on.plantings_closed_cash == 0);
    // Soda 0.40 and 4 kWh; the vats took 150 minutes.
    CHECK(standing.stands_on.dye_cash == Approx(1.40));
    CHECK(*standing.figures.season.dye_hours == Approx(2.5));
    CHECK(*standing.hourly_target == Approx(12));
    CHECK(*standing.figures.home.full_margin_per_bar > *sowing.figures.home.full_margin_per_bar);

    CHECK(*dry.figures.season.dye_hours == 0);
    CHECK(*dry.figures.pigment.full_cost_per_gram == 0);
    CHECK(*dry.figures.home.cash_cost_per_bar == Approx(*dry.figures.plain.cash_cost_per_bar));
    CHECK_FALSE(dry.figures.extra_dye_hour.earned.has_value());
    CHECK_FALSE(dry.figures.breakeven.hourly_target.value.has_value());
    CHECK_FALSE(dry.figures.breakeven.yield_g_per_kg.value.has_value());
    CHECK_FALSE(dry.figures.breakeven.harvest_kg_per_vat.value.has_value());
    CHECK_FALSE(dry.figures.breakeven.hands_on_minutes_per_vat.value.has_value());
    CHECK(dry.figures.breakeven.bought_price_per_gram.value.has_value());
    for (const Verdict* each : {&standing, &dry})
        CHECK(each->figures.home_less_bought->full(12) ==
              Approx(*each->figures.home.full_margin_per_bar - *each->figures.bought.full_margin_per_bar));
}

TEST_CASE("today's prices put down once are today's prices") {
    LookingAhead shop;
    shop.offer_today(shop.oil, grams(3'000), Money::units(19));
    // In another currency, with duty and carriage: all of it is the supplier's bill of then.
    Delivery& first = shop.at(shop.shop().all<Delivery>().front().key);
    first.currency = "USD";
    first.rate = Ratio{8, 10};
    first.duty = Money::units(3);
    const Shop once = at_prices_of(shop.shop(), shop.as_of);
    CHECK_FALSE(once.all<Delivery>().front().currency.has_value());
    const Shop twice = at_prices_of(once, shop.as_of);
    for (std::size_t i = 0; i < once.all<DeliveryLine>().size(); ++i)
        CHECK(once.all<DeliveryLine>()[i].price == twice.all<DeliveryLine>()[i].price);
    // Ten kilos of oil at 19 for three, and what is delivered later keeps its price.
    for (const DeliveryLine& line : once.all<DeliveryLine>())
        if (once.find(line.lot)->material == shop.oil) CHECK(line.price == Money::millionths(63'333'333));
    const Shop earlier = at_prices_of(shop.shop(), day_of(2025, 12, 31));
    for (const DeliveryLine& line : earlier.all<DeliveryLine>())
        if (earlier.find(line.lot)->material == shop.oil) CHECK(line.price == Money::units(50));
}
