// From the bars wanted back to the seed, on the small shop whose figures can be worked out by hand (blue_shop.h):
// 10 kg of leaf from 10 m2 each summer; 10 g of powder as strong as bought from it in 2025, 30 g half as strong in
// 2026; two grams of that strength to a loaf, of which nine bars are good.
#include "domain/decisions/sowing.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/domain/decisions/blue_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

// One plant, sown twice on one bed.
struct SownBlue : BlueShop {
    Key<Planting> first = shop().all<Planting>().front().key;
    Key<Planting> second = shop().all<Planting>().back().key;

    SownBlue() {
        const auto of = plant().key;
        std::erase_if(all<Plant>(), [&](const Plant& each) { return each.key != of; });
        std::erase_if(all<Bed>(), [&](const Bed& each) { return each.key != at(first).bed; });
        at(second).plant = of;
        at(second).bed = at(first).bed;
        auto& end = add<PlantingEnd>();
        end.date = day_of(2026, 10, 1);
        end.planting = second;
        plant().days_to_harvest = 100;
    }
    Plant& plant() { return at(at(first).plant); }

    ColourSowing ask(const SowingTerms& terms = {}) const {
        const Sowing answer = sowing(shop(), ledger(), terms);
        REQUIRE(answer.colours.size() == 1);
        return answer.colours.front();
    }
    Sowing ask_all(const SowingTerms& terms = {}) const { return sowing(shop(), ledger(), terms); }
};

bool says(const ColourSowing& colour, SowingGap gap) {
    return std::ranges::find(colour.missing, gap) != colour.missing.end();
}

void all_finite(const ColourSowing& colour) {
    for (const YearRange& range : {colour.powder, colour.harvest, colour.area, colour.standing.bars,
                                   colour.shade_per_kg.of, colour.kg_per_m2.of, colour.strength.of})
        for (const auto& value : {range.bad, range.usual, range.good}) CHECK((!value || std::isfinite(*value)));
    if (colour.seed)
        for (const auto& value :
             {colour.seed->of.bad, colour.seed->of.usual, colour.seed->of.good, colour.seed->to_buy})
            CHECK((!value || std::isfinite(*value)));
}

}  // namespace

TEST_CASE("45 bars: 10 g of shade, 8 kg of leaf in a usual year, 10 in a bad and 6.7 in a good one") {
    SownBlue s;
    const ColourSowing blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(blue.bars_from == SowingFrom::asked);
    CHECK(*blue.dose == Approx(2.0 / 9));
    CHECK(*blue.powder_per_kg.of.usual == Approx(2));
    CHECK(*blue.powder_per_kg.of.bad == Approx(1));
    CHECK(*blue.powder_per_kg.of.good == Approx(3));
    CHECK(*blue.strength.of.usual == Approx(25.0 / 40));
    CHECK(*blue.shade_per_kg.of.bad == Approx(1));
    CHECK(*blue.shade_per_kg.of.usual == Approx(25.0 / 20));
    CHECK(*blue.shade_per_kg.of.good == Approx(1.5));
    CHECK(blue.shade_per_kg.from == SowingFrom::records);
    CHECK(blue.shade_per_kg.seasons == 2);
    CHECK(*blue.powder.usual == Approx(16));
    CHECK(*blue.harvest.bad == Approx(10));
    CHECK(*blue.harvest.usual == Approx(8));
    CHECK(*blue.harvest.good == Approx(10 / 1.5));
    CHECK(*blue.kg_per_m2.of.usual == Approx(1));
    CHECK(*blue.area.usual == Approx(8));
    all_finite(blue);
    // The way back: so much ground colours so many bars.
    CHECK(*blue.area.usual * *blue.kg_per_m2.of.usual * *blue.shade_per_kg.of.usual / *blue.dose == Approx(45));
}

TEST_CASE("bars not asked for are those sold in the last year; none sold says so") {
    SownBlue s;
    CHECK(s.ask().bars == Approx(3));
    CHECK(s.ask().bars_from == SowingFrom::sales);
    s.as_of = day_of(2028, 6, 1);
    const ColourSowing none = s.ask();
    CHECK(none.bars == 0);
    CHECK(says(none, SowingGap::no_bars));
    CHECK_FALSE(none.area.usual);
}

TEST_CASE("a planting that failed lowers what a square metre gives, and the worst season is the bad year") {
    SownBlue s;
    auto& slugs = s.add<Planting>();
    slugs.sown = day_of(2026, 4, 1);
    slugs.plant = s.plant().key;
    slugs.bed = s.at(s.first).bed;
    auto& end = s.add<PlantingEnd>();
    end.date = day_of(2026, 6, 1);
    end.planting = slugs.key;
    const ColourSowing blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(*blue.kg_per_m2.of.usual == Approx(20.0 / 30));
    CHECK(*blue.kg_per_m2.of.bad == Approx(0.5));
    CHECK(*blue.area.bad == Approx(10 / 0.5));
    CHECK(*blue.area.usual == Approx(8 / (20.0 / 30)));
}

TEST_CASE("a season still standing does not count yet; its ground is free once an annual's year is over") {
    SownBlue s;
    s.all<PlantingEnd>().pop_back();
    const ColourSowing blue = s.ask();
    CHECK(blue.kg_per_m2.seasons == 1);
    CHECK(blue.standing.m2 == 0);
    CHECK(blue.free_m2 == Approx(10));
}

TEST_CASE("sown 100 days before the usual first cut, then cut, dried and cured as the records say") {
    SownBlue s;
    ColourSowing blue = s.ask();
    CHECK(blue.days.sow_by == day_of(2027, 4, 23));
    CHECK(blue.days.first_cut == day_of(2027, 8, 1));
    CHECK(blue.days.powder_dry == day_of(2027, 8, 10));  // the 10th and the 9th in the two summers
    CHECK(blue.days.bars_cured == day_of(2027, 9, 7));
    CHECK_FALSE(blue.days.last_chance);
    // A second cut in both years: what is sown until 100 days before the sooner of them still gives one.
    s.harvest(day_of(2025, 9, 10), s.first, s.leaf, grams(100));
    s.harvest(day_of(2026, 9, 20), s.second, s.leaf, grams(100));
    CHECK(s.ask().days.last_chance == day_of(2027, 6, 2));
    // Asked in March, this year's sowing is still to come.
    s.as_of = day_of(2026, 3, 1);
    CHECK(s.ask().days.sow_by == day_of(2026, 4, 23));
    s.plant().days_to_harvest.reset();
    s.as_of = day_of(2026, 10, 31);
    blue = s.ask();
    CHECK(blue.days.from == SowDayFrom::last_sown);
    CHECK(blue.days.sow_by == day_of(2027, 4, 1));
}

TEST_CASE("the frosts of a usual year: under cover before the last, and no sowing that is cut after the first") {
    SownBlue s;
    auto& rule = s.add<SowingRule>();
    rule.from = day_of(2025, 1, 1);
    rule.last_frost = day_of(2020, 5, 12);
    rule.first_frost = day_of(2020, 10, 20);
    ColourSowing blue = s.ask();
    CHECK(blue.days.from == SowDayFrom::usual_cut);
    CHECK(blue.days.sow_by == day_of(2027, 4, 23));
    CHECK(blue.days.last_frost == day_of(2027, 5, 12));  // of the summer it grows in
    CHECK(blue.days.first_frost == day_of(2027, 10, 20));
    CHECK(blue.days.last_chance == day_of(2027, 7, 12));  // 100 days before
    CHECK(blue.days.frost_closes);
    // The season closes sooner than the frost: that is the last chance.
    s.harvest(day_of(2025, 9, 10), s.first, s.leaf, grams(100));
    s.harvest(day_of(2026, 9, 20), s.second, s.leaf, grams(100));
    blue = s.ask();
    CHECK(blue.days.last_chance == day_of(2027, 6, 2));
    CHECK_FALSE(blue.days.frost_closes);
    // A root does not mind.
    s.plant().years_to_first = 3;
    CHECK_FALSE(s.ask().days.last_frost);
    CHECK_FALSE(s.ask().days.first_frost);
}

TEST_CASE("no sowing on record: an annual is sown when the last frost is over, and cut its days later") {
    SownBlue s;
    s.all<Harvest>().clear();
    s.all<PlantingEnd>().clear();
    s.all<Planting>().clear();
    s.as_of = day_of(2026, 6, 1);
    CHECK(says(s.ask(), SowingGap::no_sowing_day));
    auto& rule = s.add<SowingRule>();
    rule.from = day_of(2026, 1, 1);
    rule.last_frost = day_of(2024, 2, 29);  // in a year without the day: the 1st of March
    const ColourSowing blue = s.ask();
    CHECK_FALSE(says(blue, SowingGap::no_sowing_day));
    CHECK(blue.days.from == SowDayFrom::last_frost);
    CHECK(blue.days.sow_by == day_of(2027, 3, 1));
    CHECK(blue.days.first_cut == day_of(2027, 6, 9));
    s.as_of = day_of(2025, 12, 31);  // the rule counts from the next day on
    CHECK(says(s.ask(), SowingGap::no_sowing_day));
}

TEST_CASE("days to a harvest beyond any summer, or below nought, lead nowhere worse than far away") {
    SownBlue s;
    s.add<SowingRule>().first_frost = day_of(2020, 10, 20);
    for (const int days : {1'000'000'000, 0, -5}) {
        s.plant().days_to_harvest = days;
        const ColourSowing blue = s.ask();
        REQUIRE(blue.days.sow_by);
        CHECK(*blue.days.sow_by >= s.as_of);
        CHECK(*blue.days.sow_by < s.as_of + Days{800});
    }
}

TEST_CASE("what the maker sets for all sowing counts before the program's own, and a try before both") {
    SownBlue s;
    s.plant().seed_rate = grams(1);
    auto& early = s.add<SowingRule>();
    early.from = day_of(2025, 1, 1);
    early.germination = Ratio{1, 2};
    early.reserve = Ratio{3, 2};
    auto& later = s.add<SowingRule>();  // says nothing of the reserve: that stays
    later.from = day_of(2026, 1, 1);
    later.germination = Ratio{1, 4};
    ColourSowing blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(blue.seed->coming_from == SowingFrom::setting);
    CHECK(blue.seed->reserve_from == SowingFrom::setting);
    CHECK(*blue.seed->of.usual == Approx(8'000 / 0.25 * 1.5));
    for (SowingRule& rule : s.all<SowingRule>()) rule.germination = Ratio{0, 1};
    blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(blue.seed->coming_from == SowingFrom::supposed);
    CHECK(*blue.seed->of.usual == Approx(8'000 / 0.8 * 1.5));
    all_finite(blue);
}

TEST_CASE("seed by the plant's rate, over what comes up, with a reserve; what is there is not bought") {
    SownBlue s;
    s.plant().seed_rate = grams(1);
    const auto packet = s.delivery(day_of(2026, 2, 1), s.seed, grams(5), Money::units(3));
    ColourSowing blue = s.ask({.bars = {{s.blue, 45}}, .germination = 0.8, .reserve = 1.2});
    REQUIRE(blue.seed);
    CHECK(blue.seed->coming_from == SowingFrom::supposed);
    CHECK(*blue.seed->of.usual == Approx(8'000 / 0.8 * 1.2));
    CHECK(*blue.seed->of.bad == Approx(10'000 / 0.8 * 1.2));
    CHECK(blue.seed->there == Approx(5'000));
    CHECK(*blue.seed->to_buy == Approx(12'000 - 5'000));

    auto& tried = s.add<GerminationTry>();
    tried.date = day_of(2026, 3, 1);
    tried.lot = packet;
    tried.tried = 10;
    tried.came_up = 5;
    blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(blue.seed->coming_from == SowingFrom::records);
    CHECK(*blue.seed->of.usual == Approx(8'000 / 0.5 * 1.2));
    s.all<GerminationTry>().front().came_up = 0;
    blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(says(blue, SowingGap::seed_dead));
    CHECK(blue.seed->there == 0);
    all_finite(blue);
    // Past its date on the day of sowing it is not there either.
    s.all<GerminationTry>().clear();
    s.all<DeliveryLine>().back().best_before = day_of(2027, 1, 31);
    CHECK(s.ask({.bars = {{s.blue, 45}}}).seed->there == 0);
}

TEST_CASE("seed counted by the plant and held by weight: by weight as it was sown before") {
    SownBlue s;
    s.plant().seed_rate = pieces(40);
    const ColourSowing blue = s.ask({.bars = {{s.blue, 45}}});
    REQUIRE(blue.seed);
    CHECK(blue.seed->kind == Kind::count);
    CHECK(*blue.seed->of.usual == Approx(8 * 40'000 / 0.8 * 1.2));
    CHECK(*blue.seed->usual_as_held == Approx(8'000));  // 10 g went on 10 m2
    s.plant().seed_rate.reset();
    CHECK(s.ask({.bars = {{s.blue, 45}}}).seed->rate_from == SowingFrom::records);
    s.all<PlantingUse>().clear();
    CHECK(says(s.ask(), SowingGap::no_seed_rate));
}

TEST_CASE("a root bed: this year's bars live on what stands, what is sown now is ripe in three years") {
    SownBlue s;
    s.plant().years_to_first = 3;
    s.plant().days_to_harvest.reset();
    s.all<Harvest>().clear();
    s.all<PlantingEnd>().clear();
    s.at(s.first).sown = day_of(2023, 4, 1);   // ripe in 2026
    s.at(s.second).sown = day_of(2025, 4, 1);  // ripe in 2028
    s.plant().low = s.plant().usual = s.plant().high = grams(500);
    const ColourSowing blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(blue.kg_per_m2.from == SowingFrom::plant);
    CHECK(*blue.kg_per_m2.of.usual == Approx(0.5));
    CHECK(blue.standing.year == 2026);
    CHECK(blue.standing.m2 == Approx(10));
    CHECK(*blue.area.usual == Approx(blue.harvest.usual.value_or(0) / 0.5));
    CHECK(blue.days.from == SowDayFrom::last_sown);
    CHECK(blue.days.sow_by == day_of(2027, 4, 1));
}

TEST_CASE("untested powder is reckoned by the plant's strength, else as strong as bought and a third in a bad year") {
    SownBlue s;
    s.all<ShadeTest>().clear();
    ColourSowing blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(says(blue, SowingGap::strength_untested));
    CHECK(blue.strength.from == SowingFrom::supposed);
    CHECK(*blue.harvest.usual == Approx(10.0 / 2));
    CHECK(*blue.harvest.bad == Approx(10.0 / (1 * (1.0 / 3))));
    s.plant().strength_usual = Ratio{1, 2};
    blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(blue.strength.from == SowingFrom::plant);
    CHECK(*blue.harvest.usual == Approx(10.0 / (2 * 0.5)));
}

TEST_CASE("no vat: the method's figure, else words; nothing ever came: no ground would do") {
    SownBlue s;
    s.all<DryingVat>().clear();
    ColourSowing blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(says(blue, SowingGap::no_yield));
    CHECK_FALSE(blue.area.usual);
    auto& method = s.add<Method>();
    method.colour = s.blue;
    method.usual = grams(4);
    blue = s.ask({.bars = {{s.blue, 45}}});
    CHECK(blue.powder_per_kg.from == SowingFrom::method);
    CHECK(*blue.area.usual == Approx(10.0 / 4));

    SownBlue nothing;
    std::erase_if(nothing.all<DryingVat>(), [&](const DryingVat& line) { return line.position > 0; });
    for (Drying& drying : nothing.all<Drying>()) {
        drying.lot.reset();
        drying.amount.reset();
        nothing.add<DryingVat>(drying.key).vat = nothing.shop().all<Vat>()[0].key;
    }
    blue = nothing.ask({.bars = {{nothing.blue, 45}}});
    CHECK(says(blue, SowingGap::nothing_came));
    CHECK_FALSE(blue.area.usual);
    all_finite(blue);
}

TEST_CASE("no dose, no plant, no harvest figure: each is said, and an empty shop has nothing to sow for") {
    SownBlue s;
    for (RecipeColouring& line : s.all<RecipeColouring>()) line.dose.reset();
    CHECK(says(s.ask(), SowingGap::no_dose));
    SownBlue no_harvest;
    no_harvest.all<Harvest>().clear();
    no_harvest.all<PlantingEnd>().clear();
    no_harvest.as_of = day_of(2025, 6, 1);
    CHECK(says(no_harvest.ask(), SowingGap::no_harvest_figure));
    SownBlue no_plant;
    no_plant.plant().colour.reset();
    CHECK(says(no_plant.ask(), SowingGap::no_plant));
    CHECK_FALSE(no_plant.ask().plant);
    const ShopBuilder empty;
    CHECK(sowing(empty.shop(), replay(empty.shop(), day_of(2026, 1, 1))).colours.empty());
}

TEST_CASE(
    "beds too small: the ground goes to what brings most a square metre, and to nothing that brings less than buying") {
    SownBlue s;
    CHECK_FALSE(s.ask_all({.bars = {{s.blue, 45}}}).too_small);
    const Sowing tight = s.ask_all({.bars = {{s.blue, 90}}});
    CHECK(tight.bed_m2 == Approx(10));
    CHECK(tight.wanted_m2 == Approx(16));
    CHECK(tight.too_small);
    const ColourSowing& blue = tight.colours.front();
    const Verdict verdict = s.verdict();
    CHECK(*blue.brings_per_m2 == Approx(verdict.figures.home_less_bought->cash * 90 / 16));
    CHECK(*blue.ground_given == Approx(*blue.brings_per_m2 > 0 ? 10 : 0));
    for (Price& price : s.all<Price>())
        if (price.bar == s.own_bar) price.shelf = Money::units(1);
    CHECK(*s.ask_all({.bars = {{s.blue, 90}}}).colours.front().ground_given == Approx(0));
}

TEST_CASE("powder on the shelf: how many bars, and until when at that rate") {
    SownBlue s;
    const ColourSowing blue = s.ask({.bars = {{s.blue, 90}}});
    // 36 g left at 0.625 are 22.5 g of shade: 101 bars.
    CHECK(*blue.bars_in_stock == Approx(36 * 0.625 / (2.0 / 9)));
    CHECK(blue.stock_lasts == s.as_of + Days{static_cast<int>(36 * 0.625 / (2.0 / 9) / 90 * 365)});
    // 410 days: past the powder of August 2027, not to that of the summer after.
    CHECK_FALSE(blue.can_wait);
    CHECK_FALSE(blue.bars_without);
    CHECK(s.ask({.bars = {{s.blue, 45}}}).can_wait);
    // 41 days, and 242 more until the next is dry.
    const ColourSowing many = s.ask({.bars = {{s.blue, 900}}});
    CHECK_FALSE(many.can_wait);
    CHECK(*many.bars_without == Approx(242.0 / 365 * 900));
    // On hold it colours nothing.
    for (const Key<Lot> lot : {s.powder_2025, s.powder_2026}) {
        auto& hold = s.add<Hold>();
        hold.date = day_of(2026, 10, 1);
        hold.lot = lot;
    }
    CHECK(*s.ask({.bars = {{s.blue, 90}}}).bars_in_stock == Approx(0));
}
