// What must be ordered, by which day, how much: for planned batches, and beyond them.
#include "domain/decisions/reorder.h"

#include <doctest/doctest.h>

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
