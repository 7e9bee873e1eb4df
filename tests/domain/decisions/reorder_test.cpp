// What must be ordered, by which day, how much: for planned batches, and beyond them.
#include "domain/decisions/reorder.h"

#include <doctest/doctest.h>

#include "domain/facts/material_amount.h"
#include "tests/domain/decisions/blue_shop.h"
#include "tests/domain/decisions/soap_shop.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {
const ReorderRow& of(const Reorder& answer, Key<Material> material) {
    return *std::ranges::find(answer.rows, material, &ReorderRow::material);
}
}  // namespace

TEST_CASE("oil for two of three planned batches: ordered the lead time and a half before the third") {
    SoapShop s;
    s.stock_all(2);
    s.offer(s.oil_, grams(1'000), Money::units(8), 10);
    s.plan(day_of(2026, 6, 20), 1);
    s.plan(day_of(2026, 7, 4), 1);
    s.plan(day_of(2026, 7, 25), 2);
    const Reorder answer = reorder(s.shop(), s.ledger());
    CHECK(answer.plans == 3);
    const ReorderRow& oil = of(answer, s.oil_);
    CHECK(oil.runs_out == day_of(2026, 7, 25));
    CHECK(oil.lead.safe == 15);
    CHECK(oil.order_by == day_of(2026, 7, 10));
    CHECK_FALSE(oil.late);
    CHECK(oil.after_plans == -2'000'000);
    REQUIRE(oil.order);
    CHECK(oil.order->packs >= 2);
    REQUIRE(answer.orders.size() == 1);
    CHECK(answer.orders[0].send_by == day_of(2026, 7, 10));
    CHECK(answer.orders[0].goods == oil.order->price);
}

TEST_CASE("three deliveries on record: the slowest counts, not what the offer says") {
    SoapShop s;
    for (const int days : {4, 9, 5}) {
        s.delivery(day_of(2026, 3, 1) + Days{days}, s.oil_, grams(1'000), Money::units(8));
        s.all<Delivery>().back().ordered = day_of(2026, 3, 1);
    }
    const LeadTime lead = lead_time(s.shop(), s.all<Supplier>().front().key, 30, s.today);
    CHECK(lead.records == 3);
    CHECK(lead.usual == 6);
    CHECK(lead.safe == 9);
    // Two on record say less than the offer.
    const LeadTime earlier = lead_time(s.shop(), s.all<Supplier>().front().key, 30, day_of(2026, 3, 6));
    CHECK(earlier.records == 2);
    CHECK(earlier.safe == 45);
}

TEST_CASE("a delivery that takes longer than a year is reckoned as one, and said to be") {
    SoapShop s;
    s.stock_all(0);
    s.offer(s.oil_, grams(1'000), Money::units(8), 1'000'000'000);
    s.plan(day_of(2026, 7, 5), 1);
    Reorder answer = reorder(s.shop(), s.ledger());
    CHECK(of(answer, s.oil_).lead.over_a_year);
    CHECK(of(answer, s.oil_).lead.safe == 365);
    CHECK(of(answer, s.oil_).late);
    CHECK(answer.orders.front().send_by == s.today);
    s.all<Offer>().front().lead_days = 10;
    s.delivery(day_of(2026, 3, 1), s.oil_, grams(1), Money::units(8));
    s.all<Delivery>().back().ordered = day_of(1, 1, 1);
    answer = reorder(s.shop(), s.ledger());
    CHECK(of(answer, s.oil_).lead.over_a_year);
    CHECK(of(answer, s.oil_).lead.safe == 365);
}

TEST_CASE("a plan too soon for any delivery is late, and says so") {
    SoapShop s;
    s.stock_all(0);
    s.offer(s.oil_, grams(1'000), Money::units(8), 10);
    s.plan(day_of(2026, 6, 5), 1);
    const Reorder answer = reorder(s.shop(), s.ledger());
    CHECK(of(answer, s.oil_).late);
    CHECK(answer.orders.front().send_by == s.today);
}

TEST_CASE("a price break is taken where it pays, the shelf's room where it does not fit") {
    SoapShop s;
    s.offer(s.oil_, grams(1'000), Money::units(8), 5);
    auto& cheaper = s.add<OfferBreak>(s.all<Offer>().back().key);
    cheaper.from_packs = 5;
    cheaper.price = Money::units(6);
    s.already_here(day_of(2026, 1, 1), s.oil_, grams(12'000), Money::units(90));
    for (int i = 0; i < 12; ++i) {
        const auto batch = s.batch(day_of(2025, 7, 1) + Days{200 + i * 10}, s.loaf, s.bar);
        s.uses<BatchUse>(batch, s.oil_, grams(1'000));
    }
    const Reorder answer = reorder(s.shop(), s.ledger());
    const ReorderRow& oil = of(answer, s.oil_);
    CHECK(oil.batches_a_year == 12);
    CHECK(oil.a_batch == 1'000'000);
    CHECK(oil.there == 0);
    CHECK(oil.keep > 0);
    REQUIRE(oil.order);
    CHECK(oil.order->packs >= 5);
    CHECK(oil.order->price == Money::units(6 * oil.order->packs));
    s.at(s.oil_).shelf_room = grams(4'000);
    const Reorder small = reorder(s.shop(), s.ledger());
    CHECK(of(small, s.oil_).order->packs == 4);
    CHECK(of(small, s.oil_).order->price == Money::units(32));
}

TEST_CASE("goods that reach the supplier's mark travel free; below it, how much is missing") {
    SoapShop s;
    s.stock_all(0);
    s.offer(s.oil_, grams(1'000), Money::units(8), 5);
    s.all<Supplier>().front().carriage = Money::units(6);
    s.all<Supplier>().front().carriage_free_from = Money::units(20);
    s.plan(day_of(2026, 8, 1), 2);
    Reorder answer = reorder(s.shop(), s.ledger());
    CHECK(answer.orders[0].carriage == Money::units(6));
    CHECK(answer.orders[0].to_free_carriage == Money::units(4));
    s.plan(day_of(2026, 8, 2), 1);
    answer = reorder(s.shop(), s.ledger());
    CHECK(answer.orders[0].carriage.is_zero());
}

TEST_CASE("lots about to go off are named, with the bars that could use them") {
    SoapShop s;
    s.stock_all(1);
    s.all<AlreadyHere>().front().best_before = day_of(2026, 7, 1);
    const Reorder answer = reorder(s.shop(), s.ledger());
    REQUIRE(answer.going_off.size() == 1);
    CHECK(answer.going_off[0].left == 1'000'000);
    CHECK(answer.going_off[0].bars == std::vector{s.bar});
}

TEST_CASE("no plans, no batches, nobody offers it: nothing is ordered and nothing fails") {
    SoapShop s;
    CHECK(reorder(s.shop(), s.ledger()).rows.empty());
    s.plan(day_of(2026, 8, 1), 1);
    const Reorder answer = reorder(s.shop(), s.ledger());
    CHECK(of(answer, s.oil_).wanted);
    CHECK_FALSE(of(answer, s.oil_).order);
    CHECK(answer.orders.empty());
    // A plan the maker had not yet made by that day is not known.
    CHECK(reorder(s.shop(), replay(s.shop(), day_of(2026, 4, 1))).plans == 0);
}

TEST_CASE("an order is no more than is used before it goes off, but a plan comes first") {
    SoapShop s;
    s.offer(s.oil_, grams(1'000), Money::units(8), 5);
    s.all<Supplier>().front().carriage = Money::units(20);  // worth ordering much at a time
    s.already_here(day_of(2026, 1, 1), s.oil_, grams(12'000), Money::units(90));
    for (int i = 0; i < 12; ++i) {
        const auto batch = s.batch(day_of(2026, 1, 15) + Days{i * 10}, s.loaf, s.bar);
        s.uses<BatchUse>(batch, s.oil_, grams(1'000));
    }
    const int as_it_pays = of(reorder(s.shop(), s.ledger()), s.oil_).order->packs;
    s.at(s.oil_).shelf_life_days = 183;  // half of the twelve packs a year
    const int fresh = of(reorder(s.shop(), s.ledger()), s.oil_).order->packs;
    CHECK(fresh == 6);
    CHECK(as_it_pays > fresh);
    s.plan(day_of(2026, 8, 1), 9);
    CHECK(of(reorder(s.shop(), s.ledger()), s.oil_).order->packs >= 9);
}

namespace {

// Loaves with our own blue: 4 g each of a powder half as strong as bought. 6 g of the first and all 30 g of the second
// are left; of the first, as strong as bought, 4 went into the only loaf.
struct Planned : BlueShop {
    void plan(Key<Material> bar, Day date, int loaves) {
        auto& fact = add<Plan>();
        fact.noted = day_of(2026, 10, 1);
        fact.date = date;
        fact.recipe = loaf;
        fact.bar = bar;
        fact.loaves = loaves;
    }
    Reorder ask() const { return reorder(shop(), ledger()); }
};

}  // namespace

TEST_CASE("own powder that runs short: so much bought in at equal shade, or so many loaves fewer") {
    Planned s;
    for (const auto material : s.complete_the_soap())
        s.offer(day_of(2026, 1, 1), material, grams(1'000), Money::units(8));
    s.plan(s.own_bar, day_of(2026, 12, 1), 9);
    CHECK(s.ask().colours.empty());  // 36 g are there, of which a loaf takes 2 g over their strength
    s.plan(s.own_bar, day_of(2027, 1, 10), 5);
    const Reorder answer = s.ask();
    REQUIRE(answer.colours.size() == 1);
    const ColourShort& blue = answer.colours.front();
    const double strength = (6 * 1.0 + 30 * 0.5) / 36;
    const double a_loaf = 2 / strength;
    CHECK(blue.own);
    CHECK(blue.material == s.powder);
    CHECK(blue.there == 36'000);
    CHECK(static_cast<double>(blue.short_by) == doctest::Approx((14 * a_loaf - 36) * 1e3).epsilon(1e-3));
    CHECK(blue.runs_out == day_of(2027, 1, 10));
    CHECK_FALSE(blue.next_powder);  // both beds are over
    CHECK(blue.buy == s.bought_blue);
    // At equal shade: as many grams of the standard as the powder that is missing would have been.
    CHECK(static_cast<double>(blue.buy_quantity) ==
          doctest::Approx(static_cast<double>(blue.short_by) * strength).epsilon(1e-3));
    REQUIRE(blue.buy_cost);
    CHECK(*blue.buy_cost == doctest::Approx(static_cast<double>(blue.buy_quantity) / 1e3 * 0.30));
    CHECK(blue.loaves() == 4);  // 14 loaves of 3.43 g, 36 g there: 10 can be poured
    REQUIRE(blue.left());
    CHECK(blue.fewer.front().plan == s.shop().all<Plan>().back().key);
    // Nine good bars a loaf of twenty cut, two rejected in the other colour.
    CHECK(*blue.left() > 0);
}

TEST_CASE("what stands now is powder for the plans after it is dry; those before it still want theirs") {
    Planned s;
    s.plan(s.own_bar, day_of(2027, 3, 1), 8);
    s.plan(s.own_bar, day_of(2027, 9, 20), 8);
    const std::int64_t without = s.ask().colours.front().short_by;
    const auto third = s.blue_planting(day_of(2026, 10, 15), 10'000);
    s.at(s.at(third).plant).years_to_first = 1;
    const auto plant = s.at(s.shop().all<Planting>().front().key).plant;
    for (Planting& each : s.all<Planting>()) each.plant = s.at(third).plant;
    CHECK(plant != s.at(third).plant);
    const Reorder answer = s.ask();
    for (const ColourShort& each : answer.colours) CHECK(each.short_by < without);
}

TEST_CASE("bought colour that runs short is bought, or fewer loaves of it are poured; no price, no cost") {
    Planned s;
    s.plan(s.bought_bar, day_of(2026, 12, 1), 60);
    Reorder answer = s.ask();
    REQUIRE(answer.colours.size() == 1);
    CHECK_FALSE(answer.colours.front().own);
    CHECK(answer.colours.front().short_by == 20'000);
    CHECK(answer.colours.front().buy == s.bought_blue);
    CHECK(answer.colours.front().buy_quantity == 20'000);
    CHECK(answer.colours.front().loaves() == 10);
    CHECK_FALSE(answer.colours.front().left());  // the soap's own cost is not on record
    s.all<DeliveryLine>().clear();
    s.all<Delivery>().clear();
    answer = s.ask();
    REQUIRE(answer.colours.size() == 1);
    CHECK_FALSE(answer.colours.front().buy_cost);
}

TEST_CASE("own colour without a match, and a plan of no loaves: no way out is made up") {
    Planned s;
    s.plan(s.own_bar, day_of(2026, 12, 1), 40);
    s.plan(s.own_bar, day_of(2026, 12, 2), 0);
    s.at(s.blue).bought_match.reset();
    const Reorder answer = s.ask();
    REQUIRE(answer.colours.size() == 1);
    CHECK_FALSE(answer.colours.front().buy);
    CHECK_FALSE(answer.colours.front().buy_cost);
    CHECK(answer.colours.front().loaves() > 0);
}

TEST_CASE("the same thing from two suppliers, or put down as two things, is named with both prices") {
    SoapShop s;
    s.delivery(day_of(2026, 3, 1), s.oil_, grams(1'000), Money::units(8));
    CHECK(reorder(s.shop(), s.ledger()).twice.empty());
    auto& other = s.add<Supplier>();
    other.name = "the other one";
    const auto second = other.key;
    s.offer(s.oil_, grams(1'000), Money::units(9), 5);
    s.offer(s.oil_, grams(5'000), Money::units(40), 5);
    s.all<Offer>().back().supplier = second;
    CHECK(reorder(s.shop(), s.ledger()).twice.empty());  // asked, never bought there
    s.delivery(day_of(2026, 4, 1), s.oil_, grams(1'000), Money::units(8));
    s.all<Delivery>().back().supplier = second;
    Reorder answer = reorder(s.shop(), s.ledger());
    REQUIRE(answer.twice.size() == 1);
    REQUIRE(answer.twice[0].from.size() == 2);
    CHECK(answer.twice[0].from[0].a_unit == doctest::Approx(8));
    CHECK(answer.twice[0].from[1].a_unit == doctest::Approx(9));
    CHECK(answer.twice[0].from[0].bought);
    s.today = day_of(2027, 6, 1);
    CHECK(reorder(s.shop(), s.ledger()).twice.empty());  // a year on, from neither

    SoapShop names;
    names.at(names.oil_).name = "Coconut oil";
    const auto again = names.oil("oil, COCONUT ", Ratio{257, 1});
    names.delivery(day_of(2026, 3, 1), names.oil_, grams(1'000), Money::units(8));
    CHECK(reorder(names.shop(), names.ledger()).twice.empty());
    names.delivery(day_of(2026, 3, 2), again, grams(1'000), Money::units(8));
    answer = reorder(names.shop(), names.ledger());
    REQUIRE(answer.twice.size() == 1);
    CHECK(answer.twice[0].materials == std::vector{names.oil_, again});
    names.at(again).name = "coconut oil, fresh";
    CHECK(reorder(names.shop(), names.ledger()).twice.empty());
}
