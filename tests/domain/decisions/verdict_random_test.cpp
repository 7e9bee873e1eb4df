#include <doctest/doctest.h>

#include <cmath>
#include <random>

#include "tests/domain/decisions/blue_shop.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

// The same shops on every machine: whole numbers of a fixed seed.
class Chance {
public:
    std::int64_t upto(std::int64_t most) { return static_cast<std::int64_t>(engine_() % (most + 1)); }

private:
    std::mt19937 engine_{404};
};

void vary(BlueShop& shop, Chance& chance) {
    if (chance.upto(1) == 0) {
        auto& tax = shop.add<SalesTax>();
        tax.from = day_of(2025, 1, 1);
        tax.rate = {chance.upto(25), 100};
    }
    Colour& colour = shop.at(shop.blue);
    colour.own_minutes_per_bar = minutes(chance.upto(4));
    colour.bought_minutes_per_bar = minutes(chance.upto(4));
    colour.own_cost_per_bar = Money::hundredths(chance.upto(50));
    for (const Price& price : shop.shop().all<Price>())
        shop.at(price.key).shelf = Money::hundredths(300 + chance.upto(600));
    for (const ShadeTest& test : shop.shop().all<ShadeTest>())
        shop.at(test.key).needed_for_same = Ratio{1 + chance.upto(40), 10};
    for (const Tending& tending : shop.shop().all<Tending>()) shop.at(tending.key).time = minutes(chance.upto(600));
    for (const VatStep& step : shop.shop().all<VatStep>()) shop.at(step.key).hands_on = minutes(1 + chance.upto(200));
    for (const RecipeColouring& line : shop.shop().all<RecipeColouring>())
        if (line.dose) shop.at(line.key).dose = Amount{Quantity::milligrams(500 + chance.upto(8'000)), Unit::g};
    // A method for some of the vats.
    const auto method = shop.add<Method>().key;
    shop.add<MethodStep>(method).hands_on = minutes(chance.upto(60));
    shop.add<MethodStep>(method).hands_on_per_kg = minutes(chance.upto(9));
    auto& soda = shop.add<MethodUse>(method);
    soda.material = shop.soda;
    soda.amount = grams(1 + chance.upto(40));
    soda.per = static_cast<Per>(chance.upto(2));
    const auto has_method = [&] { return chance.upto(2) != 0; };
    for (const Vat& vat : shop.shop().all<Vat>())
        if (has_method()) shop.at(vat.key).method = method;
    // A second lot off some of the plates, and a little lost on it.
    const auto dryings = shop.shop().all<Drying>();
    for (const Drying& drying : dryings) {
        if (!drying.lot || chance.upto(1) == 0) continue;
        const auto second = shop.lot(shop.powder);
        auto& line = shop.add<DryingLot>(drying.key);
        line.lot = second;
        line.amount = grams(1 + chance.upto(9));
        line.worth = Ratio{chance.upto(20), 10};
        shop.at(drying.key).lost = grams(chance.upto(3));
    }
    // A second pair of hands, at another target and for pay.
    const auto helper = shop.person(day_of(2025, 1, 1), Money::units(chance.upto(30)));
    if (chance.upto(1) == 0) shop.at(shop.shop().all<Pay>().back().key).standing = Standing::paid;
    for (const VatStep& step : shop.shop().all<VatStep>())
        if (chance.upto(2) == 0) shop.at(step.key).who = helper;
    for (std::int64_t more = chance.upto(2); more > 0; --more)
        shop.dry(day_of(2026, 9, 9), shop.vat(day_of(2026, 9, 5), {}, 0, chance.upto(90), chance.upto(3'000)), 0, 5);
    if (chance.upto(1) == 0)
        shop.bill(day_of(2026, 8, 5), Money::hundredths(chance.upto(900)), DyeOnly::vat, {chance.upto(4), 4});
    if (chance.upto(2) == 0)
        shop.loss(day_of(2026, 9, 20), shop.powder, grams(chance.upto(20)), LossReason::spilled).lot = shop.powder_2026;
}

}  // namespace

TEST_CASE("on any shop the model gives, to the minor unit and far beyond, what the books' bars differ by") {
    Chance chance;
    int compared = 0;
    for (int i = 0; i < 200; ++i) {
        CAPTURE(i);
        BlueShop shop;
        vary(shop, chance);
        const Verdict verdict = shop.verdict();
        const VerdictFigures& figures = verdict.figures;
        REQUIRE(figures.model);
        if (!verdict.hourly_target) continue;
        ++compared;
        const double target = *verdict.hourly_target;
        CHECK(std::abs(figures.home_less_bought->cash -
                       (*figures.home.cash_margin_per_bar - *figures.bought.cash_margin_per_bar)) < 1e-6);
        CHECK(std::abs(figures.home_less_bought->full(target) -
                       (*figures.home.full_margin_per_bar - *figures.bought.full_margin_per_bar)) < 1e-6);
        CHECK(std::abs(figures.home_less_bought->hours * 60 -
                       (*figures.home.hands_on_minutes_per_bar - *figures.bought.hands_on_minutes_per_bar)) < 1e-6);
        CHECK(figures.extra_dye_hour.earned == figures.breakeven.hourly_target.value);
    }
    CHECK(compared > 150);
}

TEST_CASE("on any shop more general overhead changes no difference, and a failed vat lowers it") {
    Chance chance;
    for (int i = 0; i < 50; ++i) {
        CAPTURE(i);
        BlueShop shop;
        vary(shop, chance);
        const VerdictFigures before = shop.verdict().figures;
        shop.at(shop.shop().all<Overhead>().front().key).per_year = Money::units(1'000 + chance.upto(50'000));
        const VerdictFigures dearer = shop.verdict().figures;
        CHECK(dearer.home_less_bought->cash == before.home_less_bought->cash);
        CHECK(dearer.home_less_bought->hours == before.home_less_bought->hours);
        CHECK(dearer.extra_dye_hour.earned == before.extra_dye_hour.earned);
        CHECK(dearer.breakeven.harvest_kg_per_vat.value == before.breakeven.harvest_kg_per_vat.value);

        const auto failed = shop.vat(day_of(2026, 9, 6), {}, 0, 30, 1'000);
        shop.dry(day_of(2026, 9, 9), failed, 0, 0);
        const VerdictFigures after = shop.verdict().figures;
        CHECK(after.home_less_bought->cash < before.home_less_bought->cash);
        CHECK(after.home_less_bought->full(12) < before.home_less_bought->full(12));
    }
}
