#include <doctest/doctest.h>

#include <cmath>

#include "tests/domain/decisions/blue_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

TEST_CASE("what home pigment took, failures in") {
    const Verdict verdict = BlueShop{}.verdict();
    CHECK(verdict.window == Window{day_of(2024, 11, 1), day_of(2026, 10, 31)});
    const StandsOn& on = verdict.stands_on;
    CHECK(on.vats_finished == 3);
    CHECK(on.vats_failed == 1);
    // The vat that gave nothing: half the leaf (materials 0.50, 45 min), 2 kWh, 30 min.
    CHECK(on.failed_cash == Approx(1.00));
    CHECK(on.failed_hours == Approx(1.25));
    CHECK(on.harvest_years == 2);
    CHECK(on.kg == Approx(20));
    CHECK(on.grams_dried == Approx(40));
    CHECK(on.grams_used == Approx(4));
    CHECK(on.grams_left == Approx(36));
    // Half of the first bed was never cut: half its seed and tending.
    CHECK(on.plantings_closed_cash == Approx(1.00));
    CHECK(on.plantings_closed_hours == Approx(1.00));
    CHECK(on.plantings_lost.empty());
    // Seed 2.00, soda 0.40, 4 kWh 1.00. Garden 120 + 30 + 60 min, vats 66 + 30 + 54 min, at 12 an hour.
    CHECK(on.dye_cash == Approx(3.40));
    CHECK(*on.dye_labour == Approx(72));
    CHECK(*verdict.hourly_target == Approx(12));

    const PigmentFigures& pigment = verdict.figures.pigment;
    CHECK(*pigment.cash_cost_per_gram == Approx(3.40 / 40));
    CHECK(*pigment.full_cost_per_gram == Approx(75.40 / 40));
    CHECK(*pigment.hands_on_minutes_per_gram == Approx(9));
    CHECK(*pigment.strength == Approx((10 * 1 + 30 * 0.5) / 40));
    CHECK(*pigment.yield_g_per_kg == Approx(2));
    CHECK(*pigment.harvest_kg_per_vat == Approx(20.0 / 3));
    CHECK(*pigment.hands_on_minutes_per_vat == Approx(50));
}

TEST_CASE("the three bars") {
    const Verdict verdict = BlueShop{}.verdict();
    const VerdictFigures& figures = verdict.figures;
    // 18 good bars of two loaves of 20: oil 10.00, paper 1.80, 18 of overhead, 135 min at 12 an hour.
    CHECK(verdict.base_bars == 18);
    CHECK(*verdict.dose_per_bar == Approx(4.0 / 18));
    CHECK(*figures.plain.materials_per_bar == Approx(11.80 / 18));
    CHECK(*figures.plain.overhead_per_bar == Approx(1));
    CHECK(*figures.plain.energy_per_bar == 0);
    CHECK(*figures.plain.labour_per_bar == Approx(1.5));
    CHECK(*figures.plain.hands_on_minutes_per_bar == Approx(7.5));

    const double home_grams = 4.0 / 18 / 0.625;
    CHECK(*figures.home.cash_cost_per_bar == Approx(11.80 / 18 + 1 + home_grams * 0.085));
    CHECK(*figures.home.energy_per_bar == Approx(home_grams * 1.00 / 40));
    CHECK(*figures.home.labour_per_bar == Approx(1.5 + home_grams * 1.8));
    CHECK(*figures.home.hands_on_minutes_per_bar == Approx(7.5 + home_grams * 9));
    CHECK(*figures.bought.cash_cost_per_bar == Approx(11.80 / 18 + 1 + 4.0 / 18 * 0.32));
    CHECK(*figures.bought.hands_on_minutes_per_bar == Approx(7.5));

    // Fees: 2 % of 20.00 by card over takings of 38.00; four payments and seven bags over seven bars.
    CHECK(verdict.fee_share == Approx(0.40 / 38));
    CHECK(verdict.fee_per_bar == Approx((0.40 + 0.35) / 7));
    CHECK(*figures.plain.selling_cost_per_bar == Approx(3));
    CHECK(*figures.plain.selling_minutes_per_bar == Approx(20));
    CHECK(*figures.home.fees_per_bar == Approx(6 * 0.40 / 38 + 0.75 / 7));
    CHECK(*figures.home.cash_margin_per_bar ==
          Approx(6 - *figures.home.fees_per_bar - *figures.home.cash_cost_per_bar));
    CHECK(*figures.home.full_margin_per_bar ==
          Approx(*figures.home.cash_margin_per_bar - *figures.home.labour_per_bar));
    CHECK(*figures.home.earnings_per_hour ==
          Approx(*figures.home.cash_margin_per_bar * 60 / *figures.home.hands_on_minutes_per_bar));
    CHECK(*figures.home.earnings_per_hour_with_selling ==
          Approx((*figures.home.cash_margin_per_bar - 3) * 60 / (*figures.home.hands_on_minutes_per_bar + 20)));
}

TEST_CASE("what the extra dye hour earned, and against what it is held") {
    const Verdict verdict = BlueShop{}.verdict();
    const VerdictFigures& figures = verdict.figures;
    const double cash = 0.5 * (1 - 0.40 / 38) - (4.0 / 18 / 0.625 * 0.085 - 4.0 / 18 * 0.32);
    const double hours = 3.2 / 60;
    CHECK(figures.home_less_bought->cash == Approx(cash));
    CHECK(figures.home_less_bought->hours == Approx(hours));
    CHECK(*figures.extra_dye_hour.earned == Approx(cash / hours));
    // A plain bar leaves 5 - fees - 0.655556 for 27.5 min, and four of five were sold.
    const double soap = (5 - (5 * 0.40 / 38 + 0.75 / 7) - 11.80 / 18) / (27.5 / 60) * 0.8;
    CHECK(*figures.extra_dye_hour.soap_hour == Approx(soap));
    CHECK(*figures.extra_dye_hour.hurdle == Approx(12));

    CHECK(*figures.season.dye_hours == Approx(6));
    CHECK(*figures.season.bars == Approx(112.5));
    CHECK(*figures.season.cash_difference == Approx(112.5 * cash));
    CHECK(*figures.season.full_difference == Approx(112.5 * (cash - 12 * hours)));
}

TEST_CASE("each season on record, and the ruling") {
    const Verdict verdict = BlueShop{}.verdict();
    REQUIRE(verdict.seasons.size() == 2);
    const SeasonRow& bad = verdict.seasons[0];
    const SeasonRow& good = verdict.seasons[1];
    CHECK(bad.year == 2025);
    CHECK(bad.vats == 2);
    CHECK(bad.failed_vats == 1);
    CHECK(*bad.g_per_kg == Approx(1));
    CHECK(*bad.strength == Approx(1));
    CHECK(bad.dye_hours == Approx(4.1));
    CHECK(good.dye_hours == Approx(1.9));
    CHECK(*good.full_cost_per_gram == Approx(22.80 / 30));
    // 2026: 0.4444 g a bar, no money, 114/30 min a gram.
    const double kept = 1 - 0.40 / 38;
    CHECK(*good.full_difference_at_hurdle == Approx(0.5 * kept + 4.0 / 18 * 0.32 - 4.0 / 9 * 0.76));
    CHECK(*good.full_difference_at_hurdle_no_premium == Approx(4.0 / 18 * 0.32 - 4.0 / 9 * 0.76));
    CHECK(*bad.full_difference_at_hurdle < *good.full_difference_at_hurdle);
    // Behind in the usual year, ahead in the good one.
    CHECK(*verdict.figures.full_difference_at_hurdle < 0);
    CHECK(*good.full_difference_at_hurdle > 0);
    CHECK(verdict.ruling.word == RulingWord::too_close);
    REQUIRE(verdict.vats.size() == 3);
    CHECK(verdict.vats[0].grams == Approx(10));
    CHECK(verdict.vats[1].grams == 0);
    CHECK(!verdict.vats[1].full_cost_per_gram_booked);
    // What the first vat's lot came into the books at: leaf 0.50 and 45 min, soda 0.40, 2 kWh, 66 min.
    CHECK(*verdict.vats[0].cash_cost_per_gram_booked == Approx(1.40 / 10));
    CHECK(*verdict.vats[0].full_cost_per_gram_booked == Approx((1.40 + 9 + 13.20) / 10));
}

TEST_CASE("the model gives the difference the three bars give") {
    BlueShop shop;
    auto& tax = shop.add<SalesTax>();
    tax.from = day_of(2026, 1, 1);
    tax.rate = {20, 100};
    Colour& colour = shop.at(shop.blue);
    colour.own_minutes_per_bar = minutes(3);
    colour.bought_minutes_per_bar = minutes(1);
    colour.own_cost_per_bar = Money::hundredths(7);
    const VerdictFigures figures = shop.verdict().figures;
    CHECK(std::abs(figures.home_less_bought->cash -
                   (*figures.home.cash_margin_per_bar - *figures.bought.cash_margin_per_bar)) < 1e-9);
    CHECK(std::abs(figures.home_less_bought->full(12) -
                   (*figures.home.full_margin_per_bar - *figures.bought.full_margin_per_bar)) < 1e-9);
    CHECK(std::abs(figures.home_less_plain->full(12) -
                   (*figures.home.full_margin_per_bar - *figures.plain.full_margin_per_bar)) < 1e-9);
    CHECK(std::abs(figures.bought_less_plain->full(12) -
                   (*figures.bought.full_margin_per_bar - *figures.plain.full_margin_per_bar)) < 1e-9);
    CHECK(figures.extra_dye_hour.earned == figures.breakeven.hourly_target.value);
}

TEST_CASE("more general overhead changes no difference, no break-even and no extra dye hour") {
    const Verdict before = BlueShop{}.verdict();
    BlueShop dearer;
    dearer.at(dearer.shop().all<Overhead>().front().key).per_year = Money::units(9'000);
    const Verdict after = dearer.verdict();
    CHECK(*after.figures.plain.overhead_per_bar == Approx(25));
    CHECK(after.figures.home_less_bought->cash == before.figures.home_less_bought->cash);
    CHECK(after.figures.home_less_bought->hours == before.figures.home_less_bought->hours);
    CHECK(after.figures.extra_dye_hour.earned == before.figures.extra_dye_hour.earned);
    CHECK(after.figures.extra_dye_hour.hurdle == before.figures.extra_dye_hour.hurdle);
    CHECK(after.figures.breakeven.premium_per_bar.value == before.figures.breakeven.premium_per_bar.value);
    CHECK(after.figures.breakeven.yield_g_per_kg.value == before.figures.breakeven.yield_g_per_kg.value);
    CHECK(*after.figures.home.full_margin_per_bar - *after.figures.bought.full_margin_per_bar ==
          Approx(*before.figures.home.full_margin_per_bar - *before.figures.bought.full_margin_per_bar));
}

TEST_CASE("a further vat that gives nothing lowers the difference, though its powder's lot stays as it was") {
    const Verdict before = BlueShop{}.verdict();
    BlueShop shop;
    const auto failed = shop.vat(day_of(2026, 9, 5), {}, 0, 90, 3'000);
    shop.dry(day_of(2026, 9, 9), failed, 0, 0);
    const Verdict after = shop.verdict();
    CHECK(after.figures.home_less_bought->full(12) < before.figures.home_less_bought->full(12));
    CHECK(after.figures.home_less_bought->cash < before.figures.home_less_bought->cash);
    CHECK(after.vats[0].full_cost_per_gram_booked == before.vats[0].full_cost_per_gram_booked);
    CHECK(after.stands_on.vats_failed == 2);
}

TEST_CASE("a bed that was lost, leaf that spoiled and powder thrown away all count") {
    const double before = *BlueShop{}.verdict().figures.pigment.cash_cost_per_gram;
    BlueShop shop;
    shop.delivery(day_of(2026, 3, 1), shop.seed, grams(10), Money::units(6));
    const auto lost = shop.blue_planting(day_of(2026, 4, 2), 5'000);
    shop.uses<PlantingUse>(lost, shop.seed, grams(10));
    auto& end = shop.add<PlantingEnd>();
    end.date = day_of(2026, 6, 1);
    end.planting = lost;
    const Verdict with_bed = shop.verdict();
    CHECK(*with_bed.figures.pigment.cash_cost_per_gram == Approx(before + 6.0 / 40));
    CHECK(with_bed.stands_on.plantings_lost == std::vector{lost});

    shop.loss(day_of(2026, 9, 20), shop.powder, grams(10), LossReason::spilled).lot = shop.powder_2026;
    shop.loss(day_of(2026, 9, 21), shop.powder, grams(5), LossReason::test).lot = shop.powder_2026;
    const Verdict with_spill = shop.verdict();
    CHECK(*with_spill.figures.pigment.cash_cost_per_gram == Approx(9.40 / 30));
    CHECK(*with_spill.figures.pigment.strength == Approx((10 * 1 + 20 * 0.5) / 30));
    CHECK(with_spill.stands_on.grams_lost == Approx(10));
    CHECK(with_spill.stands_on.grams_given == Approx(5));

    const auto more = shop.blue_planting(day_of(2026, 4, 3), 1'000);
    shop.tend(day_of(2026, 5, 3), more, 60);
    shop.harvest(day_of(2026, 8, 5), more, shop.leaf, grams(1'000));
    CHECK(shop.verdict().stands_on.leaf_kg == Approx(1));
    shop.loss(day_of(2026, 8, 9), shop.leaf, grams(1'000), LossReason::spoiled);
    const Verdict with_leaf = shop.verdict();
    CHECK(with_leaf.stands_on.leaf_kg == Approx(0));
    CHECK(with_leaf.stands_on.leaf_lost_hours == Approx(1));
    CHECK(*with_leaf.figures.season.dye_hours == Approx(7));
}

TEST_CASE("a bill for the dye alone counts as far as it could have been avoided") {
    const Verdict before = BlueShop{}.verdict();
    BlueShop shop;
    shop.bill(day_of(2026, 10, 1), Money::units(20), DyeOnly::vat, {1, 4});
    const Verdict after = shop.verdict();
    CHECK(after.stands_on.bills_cash == Approx(5));
    CHECK(after.stands_on.already_spent == Approx(15));
    CHECK(*after.figures.pigment.cash_cost_per_gram == Approx(8.40 / 40));
    CHECK(after.stands_on.dye_cash == Approx(before.stands_on.dye_cash + 5));
}

TEST_CASE("a delivery of the bought-in moves the verdict, an offer does not") {
    BlueShop shop;
    auto& offer = shop.add<Offer>();
    offer.noted = offer.from = day_of(2026, 2, 1);
    offer.material = shop.bought_blue;
    offer.pack = grams(100);
    offer.price = Money::units(1'000);
    CHECK(*shop.verdict().bought_price_per_gram == Approx(0.32));
    shop.delivery(day_of(2026, 2, 1), shop.bought_blue, grams(100), Money::units(50));
    CHECK(*shop.verdict().bought_price_per_gram == Approx(0.41));
    // Of the last twelve months only that one.
    CHECK(*shop.verdict(12).bought_price_per_gram == Approx(0.50));
}

TEST_CASE("vats dried on one plate share its powder by their leaf") {
    BlueShop shop;
    const auto bed = shop.blue_planting(day_of(2026, 4, 1), 8'000);
    const auto cut = shop.harvest(day_of(2026, 9, 1), bed, shop.leaf, grams(8'000));
    const auto small = shop.vat(day_of(2026, 9, 2), cut, 2'000, 10, 0);
    const auto large = shop.vat(day_of(2026, 9, 2), cut, 6'000, 10, 0);
    shop.dry(day_of(2026, 9, 9), small, 16, 0);
    shop.add<DryingVat>(shop.shop().all<Drying>().back().key).vat = large;
    const Verdict verdict = shop.verdict();
    REQUIRE(verdict.vats.size() == 5);
    CHECK(verdict.vats[3].grams == Approx(4));
    CHECK(verdict.vats[4].grams == Approx(12));
    CHECK(verdict.vats[4].shared_plate);
    CHECK(verdict.stands_on.grams_dried == Approx(56));
}

TEST_CASE("which colour the hours went to") {
    BlueShop shop;
    auto& other = shop.add<Colour>();
    other.code = "a-first";
    const auto pink = other.key;
    CHECK(most_worked_colour(shop.shop(), shop.ledger()) == shop.blue);
    const auto bed = shop.planting(day_of(2026, 4, 1), square_metres(1), grams(100));
    shop.at(shop.at(bed).plant).colour = pink;
    shop.tend(day_of(2026, 5, 1), bed, 700);
    CHECK(most_worked_colour(shop.shop(), shop.ledger()) == pink);
    CHECK(colour_by_code(shop.shop(), "a-first") == pink);
    CHECK(!colour_by_code(shop.shop(), "no such"));
}
