// What a verdict says when something is not on record.
#include <doctest/doctest.h>

#include <algorithm>

#include "tests/domain/decisions/blue_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

bool found(const Verdict& verdict, VerdictFindingCode code) {
    return std::ranges::count(verdict.findings, code, &VerdictFinding::code) == 1;
}

}  // namespace

TEST_CASE("untested powder gives a pair, never a strength of one in silence") {
    BlueShop shop;
    // The 30 g are said not to compare: 10 of 40 g tested is under half.
    shop.at(shop.shop().all<ShadeTest>().back().key).needed_for_same.reset();
    const Verdict verdict = shop.verdict();
    CHECK(!verdict.figures.pigment.strength);
    CHECK(verdict.figures.strength == 1);
    REQUIRE(verdict.if_weaker);
    CHECK(*verdict.if_weaker->season.bars == Approx(*verdict.figures.season.bars / 3));
    CHECK(verdict.if_weaker->home_less_bought->cash < verdict.figures.home_less_bought->cash);
    CHECK(found(verdict, VerdictFindingCode::strength_untested));
    CHECK(verdict.ruling.word == RulingWord::too_soon);
    CHECK(verdict.ruling.missing == MissingRecord::shade_test);
    // A second look settles it.
    shop.shade_test(day_of(2026, 10, 2), shop.powder_2026, {4, 1});
    CHECK(*shop.verdict().figures.pigment.strength == Approx((10 * 1 + 30 * 0.25) / 40));
    CHECK(!shop.verdict().if_weaker);
}

TEST_CASE("nothing to compare with, nothing dried, nothing sold") {
    SUBCASE("no bought-in match") {
        BlueShop shop;
        shop.at(shop.blue).bought_match.reset();
        const Verdict verdict = shop.verdict();
        CHECK(!verdict.figures.bought.shelf_price_per_bar);
        CHECK(!verdict.figures.bought.cash_cost_per_bar);
        CHECK(!verdict.figures.extra_dye_hour.earned);
        CHECK(verdict.figures.extra_dye_hour.hurdle);
        CHECK(!verdict.figures.season.cash_difference);
        CHECK(verdict.figures.season.dye_hours);
        CHECK(!verdict.figures.breakeven.bought_price_per_gram.value);
        CHECK(verdict.figures.home.cash_cost_per_bar);
        CHECK(found(verdict, VerdictFindingCode::no_bought_match));
        CHECK(verdict.ruling.missing == MissingRecord::bought_match);
    }
    SUBCASE("before the first vat was dry") {
        BlueShop shop;
        shop.as_of = day_of(2025, 8, 5);
        const Verdict verdict = shop.verdict();
        CHECK(!verdict.figures.pigment.cash_cost_per_gram);
        CHECK(!verdict.figures.season.dye_hours);
        CHECK(verdict.stands_on.vats_not_dry.size() == 2);
        CHECK(verdict.stands_on.standing_beds.size() == 1);
        CHECK(verdict.ruling.missing == MissingRecord::dried_vat);
        CHECK(found(verdict, VerdictFindingCode::no_vat_finished));
        CHECK(found(verdict, VerdictFindingCode::no_base_recipe));
        CHECK(found(verdict, VerdictFindingCode::no_sales_yet));
        // Fees as they are set: one card payment and one bag a bar.
        CHECK(verdict.fee_share == Approx(0.02));
        CHECK(verdict.fee_per_bar == Approx(0.15));
    }
    SUBCASE("all that was dried gave nothing") {
        BlueShop shop;
        shop.as_of = day_of(2025, 8, 20);
        shop.at(shop.shop().all<Drying>().front().key).amount.reset();
        const Verdict verdict = shop.verdict();
        CHECK(*verdict.figures.season.cash_difference == Approx(-2.40));
        CHECK(verdict.ruling.missing == MissingRecord::dried_vat);
    }
    SUBCASE("one summer only") {
        BlueShop shop;
        shop.at(shop.shop().all<ShadeTest>().back().key).needed_for_same = Ratio{2, 1};
        for (const Vat& each : shop.shop().all<Vat>()) shop.at(each.key).date = std::max(each.date, day_of(2026, 8, 2));
        CHECK(shop.verdict().ruling.word == RulingWord::too_soon);
    }
    SUBCASE("no hourly target") {
        BlueShop shop;
        shop.at(shop.shop().all<Pay>().front().key).per_hour.reset();
        const Verdict verdict = shop.verdict();
        CHECK(!verdict.hourly_target);
        CHECK(!verdict.figures.home.full_cost_per_bar);
        CHECK(verdict.figures.home.cash_cost_per_bar);
        CHECK(!verdict.figures.breakeven.premium_per_bar.value);
        CHECK(verdict.figures.breakeven_cash.premium_per_bar.value);
        CHECK(verdict.figures.breakeven.hourly_target.value == verdict.figures.extra_dye_hour.earned);
        // The soap hour is all there is to hold it against.
        CHECK(verdict.figures.extra_dye_hour.hurdle == verdict.figures.extra_dye_hour.soap_hour);
        CHECK(found(verdict, VerdictFindingCode::no_hourly_target));
    }
}

TEST_CASE("where prices come from") {
    BlueShop shop;
    shop.at(shop.shop().all<Price>().back().key).from = day_of(2027, 1, 1);
    const Verdict from_plain = shop.verdict();
    CHECK(*from_plain.figures.home.shelf_price_per_bar == Approx(5));
    CHECK(from_plain.stands_on.home_price_from == PriceFrom::plain);
    CHECK(found(from_plain, VerdictFindingCode::price_from_plain));
    auto& belief = shop.add<PriceBelief>();
    belief.date = day_of(2026, 2, 1);
    belief.colour = shop.blue;
    belief.own = Money::hundredths(725);
    belief.bought = Money::units(99);
    const Verdict believed = shop.verdict();
    CHECK(*believed.figures.home.shelf_price_per_bar == Approx(7.25));
    CHECK(*believed.figures.bought.shelf_price_per_bar == Approx(5.50));
}
