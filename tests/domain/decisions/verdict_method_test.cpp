// What a method, a plate of several lots, damp powder and a bed half lost do to the verdict. The shop is that of
// blue_shop.h: vats of 5, 5 and 10 kg took 66, 30 and 54 minutes, 0.40 of soda and 1.00 of heat.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "tests/domain/decisions/blue_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

struct MethodShop : BlueShop {
    Key<Material> water = material("tap water", Purpose::water, HeldAs::volume);
    Key<Method> method = add<Method>().key;

    // 10 minutes a vat and 2 a kilogram.
    MethodShop() {
        add<MethodStep>(method).hands_on = minutes(10);
        add<MethodStep>(method).hands_on_per_kg = minutes(2);
    }
    void use(Key<Material> material, Amount amount, Per per) {
        auto& line = add<MethodUse>(method);
        line.material = material;
        line.amount = amount;
        line.per = per;
    }
    void all_by_it() {
        for (Vat& vat : all<Vat>()) vat.method = method;
    }
    bool says(VerdictFindingCode code) const {
        return std::ranges::any_of(
            verdict().findings, [&](const VerdictFinding& finding) { return finding.code == code; });
    }
    Drying& last_drying() { return all<Drying>().back(); }
};

Amount litres(std::int64_t n) {
    return {Quantity::microlitres(n * 1'000'000), Unit::l, Mark::measured};
}

}  // namespace

TEST_CASE("with a method each amount follows its own line, scaled to what was recorded") {
    MethodShop shop;
    shop.all_by_it();
    shop.use(shop.soda, grams(50), Per::vat);
    shop.use(shop.water, litres(4), Per::kg);
    const Model model = *shop.verdict().figures.model;
    // 30 and 40 modelled minutes stand for 150.
    CHECK(model.vat_minutes_fixed * 3 == Approx(150.0 * 30 / 70));
    CHECK(model.vat_minutes_per_kg * 20 == Approx(150.0 * 40 / 70));
    CHECK(model.vat_cash_fixed * 3 == Approx(0.40));
    CHECK(model.vat_cash_per_kg * 20 == Approx(1.00));
    CHECK(!shop.says(VerdictFindingCode::method_missing));
}

TEST_CASE("what is dosed by the litre goes as the water does, and so does the heat") {
    MethodShop shop;
    shop.all_by_it();
    shop.use(shop.soda, grams(5), Per::litre);
    SUBCASE("water by the kilogram") {
        shop.use(shop.water, litres(4), Per::kg);
        CHECK(shop.verdict().figures.model->vat_cash_fixed == Approx(0));
        CHECK(shop.verdict().figures.model->vat_cash_per_kg * 20 == Approx(1.40));
    }
    SUBCASE("the same pan of water whatever goes in") {
        shop.use(shop.water, litres(10), Per::vat);
        CHECK(shop.verdict().figures.model->vat_cash_fixed * 3 == Approx(1.40));
    }
    SUBCASE("some of both: 30 l and 60 l over the three vats") {
        shop.use(shop.water, litres(10), Per::vat);
        shop.use(shop.water, litres(3), Per::kg);
        CHECK(shop.verdict().figures.model->vat_cash_fixed * 3 == Approx(1.40 / 3));
    }
    SUBCASE("no word of water") {
        CHECK(shop.verdict().figures.model->vat_cash_fixed * 3 == Approx(0.40));
        CHECK(shop.verdict().figures.model->vat_cash_per_kg * 20 == Approx(1.00));
    }
}

TEST_CASE("a vat without a method beside one that has: all its minutes are the vat's, and that is said") {
    MethodShop shop;
    shop.all<Vat>().back().method = shop.method;  // 10 and 20 modelled minutes stand for 54
    const Model model = *shop.verdict().figures.model;
    CHECK(model.vat_minutes_fixed * 3 == Approx(66 + 30 + 18));
    CHECK(model.vat_minutes_per_kg * 20 == Approx(36));
    CHECK(model.vat_cash_fixed == Approx(0));
    CHECK(shop.says(VerdictFindingCode::method_missing));
}

TEST_CASE("watched waiting that counts is the vat's; washes counted by the maker scale their step") {
    MethodShop shop;
    shop.all_by_it();
    auto& share = shop.add<WaitingShare>();
    share.from = day_of(2025, 1, 1);
    share.share = Ratio{1, 2};
    auto& watch = shop.add<MethodStep>(shop.method);
    watch.watch = Watch::attended;
    watch.waiting = minutes(20);
    auto& wash = shop.add<MethodStep>(shop.method);
    wash.hands_on = minutes(5);
    wash.times = 4;
    // 10 + 10 + 20 a vat and 2 a kilogram; then 10 + 10 + 30 in one of them.
    CHECK(shop.verdict().figures.model->vat_minutes_fixed * 3 == Approx(150.0 * 120 / 160));
    shop.all<Vat>().back().washes = 6;
    CHECK(shop.verdict().figures.model->vat_minutes_fixed * 3 == Approx(150.0 * 130 / 170));
}

TEST_CASE("a method parts what is there and changes no figure of today, but the size of the vat now matters") {
    MethodShop shop;
    const VerdictFigures before = shop.verdict().figures;
    shop.all_by_it();
    shop.use(shop.soda, grams(50), Per::vat);
    const VerdictFigures after = shop.verdict().figures;
    CHECK(after.home_less_bought->cash == Approx(before.home_less_bought->cash));
    CHECK(after.home_less_bought->hours == Approx(before.home_less_bought->hours));
    CHECK(*after.breakeven.hands_on_minutes_per_vat.value == Approx(*before.breakeven.hands_on_minutes_per_vat.value));
    CHECK(after.model->fixed_per_vat() < before.model->fixed_per_vat());
    CHECK(std::abs(after.home_less_bought->cash -
                   (*after.home.cash_margin_per_bar - *after.bought.cash_margin_per_bar)) < 1e-6);
}

TEST_CASE("powder weighed damp says nothing of the yield: its vat is left out whole, and named") {
    MethodShop shop;
    const Verdict dry = shop.verdict();
    CHECK(!shop.says(VerdictFindingCode::weighed_damp));
    shop.last_drying().dryness = Dryness::damp;
    const Verdict damp = shop.verdict();
    CHECK(shop.says(VerdictFindingCode::weighed_damp));
    CHECK(damp.stands_on.vats_finished == 2);
    CHECK(damp.stands_on.kg == Approx(10));
    CHECK(damp.stands_on.grams_dried == Approx(10));
    CHECK(damp.stands_on.vats_not_dry.size() == 1);
    CHECK(*damp.figures.season.dye_hours < *dry.figures.season.dye_hours);
    CHECK(std::abs(damp.figures.home_less_bought->cash -
                   (*damp.figures.home.cash_margin_per_bar - *damp.figures.bought.cash_margin_per_bar)) < 1e-6);
}

TEST_CASE("a further lot of the same colour is powder like the first, but its strength is its own") {
    MethodShop shop;
    const Verdict before = shop.verdict();
    shop.last_drying().amount = grams(20);
    const auto second = shop.lot(shop.powder);
    auto& line = shop.add<DryingLot>(shop.last_drying().key);
    line.lot = second;
    line.amount = grams(10);
    const Verdict after = shop.verdict();
    CHECK(after.stands_on.grams_dried == Approx(40));
    CHECK(*after.figures.pigment.cash_cost_per_gram == Approx(*before.figures.pigment.cash_cost_per_gram));
    CHECK(after.stands_on.tested_share == Approx(0.75));
    shop.shade_test(day_of(2026, 9, 2), second, {1, 1});
    // 10 g at 1, 20 g at 1/2, 10 g at 1.
    CHECK(*shop.verdict().figures.pigment.strength == Approx(0.75));
}

TEST_CASE("powder of another colour from the same plate takes its share of the cost with it, and no grams") {
    MethodShop shop;
    const Verdict before = shop.verdict();
    shop.last_drying().amount = grams(20);
    auto& green = shop.add<Colour>();
    const Key<Colour> other = green.key;
    const auto material = shop.made("green powder", MaterialKind::pigment);
    shop.at(material).colour = other;
    const auto second = shop.lot(material);
    auto& line = shop.add<DryingLot>(shop.last_drying().key);
    line.lot = second;
    line.amount = grams(10);
    const Verdict after = shop.verdict();
    CHECK(after.stands_on.grams_dried == Approx(30));
    // The vat of 2026 took 54 minutes and its leaf 60: a third of 114 is gone.
    CHECK(*after.figures.season.dye_hours * 60 == Approx(*before.figures.season.dye_hours * 60 - 38));
    CHECK(std::abs(after.figures.home_less_bought->cash -
                   (*after.figures.home.cash_margin_per_bar - *after.figures.bought.cash_margin_per_bar)) < 1e-6);
}

TEST_CASE("part of a bed lost counts in the verdict, and the bed still stands") {
    MethodShop shop;
    const Verdict before = shop.verdict();
    const auto bed = shop.all<Planting>().back().key;
    auto& lost = shop.add<BedLost>();
    lost.date = day_of(2026, 6, 1);
    lost.planting = bed;
    lost.area = square_metres(5);
    const Verdict after = shop.verdict();
    CHECK(after.stands_on.plantings_closed_hours == Approx(before.stands_on.plantings_closed_hours + 0.5));
    CHECK(*after.figures.season.dye_hours == Approx(*before.figures.season.dye_hours));
    CHECK(after.stands_on.plantings_lost.empty());
    CHECK(after.stands_on.standing_beds == before.stands_on.standing_beds);
    CHECK(after.stands_on.standing_beds.size() == 1);
}

TEST_CASE("seed kept is a credit to the colour") {
    MethodShop shop;
    const Verdict before = shop.verdict();
    const auto bed = shop.all<Planting>().back().key;
    const auto kept = shop.lot(shop.seed);
    auto& fact = shop.add<SeedKept>();
    fact.date = day_of(2026, 6, 1);
    fact.planting = bed;
    fact.lot = kept;
    fact.amount = grams(15);  // at 2.00 for 10 g: 3.00 of 12.00
    const Verdict after = shop.verdict();
    CHECK(*after.figures.season.dye_hours * 60 == Approx(*before.figures.season.dye_hours * 60 - 15));
}
