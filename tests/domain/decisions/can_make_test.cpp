// Can I make it? What a loaf takes, what is there on the day, what runs out first.
#include "domain/decisions/can_make.h"

#include <doctest/doctest.h>

#include "domain/decisions/reorder.h"
#include "tests/domain/decisions/soap_shop.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {
const Ingredient& of(const CanMake& answer, Key<Material> material) {
    return *std::ranges::find(answer.ingredients, material, &Ingredient::material);
}
}  // namespace

TEST_CASE("a loaf takes its oils, the lye and water they call for, and a band for each bar") {
    SoapShop s;
    const Ledger ledger = s.ledger();
    const LoafNeeds two = loaf_needs({s.shop(), ledger}, s.bar, 2);
    CHECK(two.unsaid.empty());
    REQUIRE(two.needs.size() == 4);
    CHECK(two.needs[0].quantity == 2'000'000);
    CHECK(static_cast<double>(two.needs[1].quantity) == doctest::Approx(190'000).epsilon(1e-4));
    CHECK(static_cast<double>(two.needs[2].quantity) == doctest::Approx(380'000).epsilon(1e-4));
    CHECK(two.needs[3].quantity == 20'000);
}

TEST_CASE("what is there is enough for three loaves, and the oil runs out first") {
    SoapShop s;
    s.stock_all(4);
    s.loss(day_of(2026, 2, 1), s.oil_, grams(500), LossReason::spilled);
    const CanMake answer = can_make(s.shop(), s.ledger(), s.bar, 4, s.today);
    CHECK_FALSE(answer.enough());
    CHECK(answer.most_loaves == 3);
    CHECK(answer.runs_out == s.oil_);
    CHECK(of(answer, s.oil_).short_by() == 500'000);
    CHECK(can_make(s.shop(), s.ledger(), s.bar, 3, s.today).enough());
}

TEST_CASE("a lot past its date is on the shelf and not counted, and the open lot is taken first") {
    SoapShop s;
    s.stock_all(2);
    const auto fresh = s.already_here(day_of(2026, 1, 2), s.oil_, grams(5'000), Money::units(40));
    s.all<AlreadyHere>().front().best_before = day_of(2026, 6, 10);
    const CanMake today = can_make(s.shop(), s.ledger(), s.bar, 3, s.today);
    CHECK(of(today, s.oil_).there == 7'000'000);
    REQUIRE(of(today, s.oil_).take.size() == 2);
    CHECK(of(today, s.oil_).take[0].quantity == 2'000'000);
    CHECK(of(today, s.oil_).take[1].lot == fresh);
    const CanMake later = can_make(s.shop(), s.ledger(), s.bar, 3, day_of(2026, 6, 11));
    CHECK(of(later, s.oil_).there == 5'000'000);
    CHECK(of(later, s.oil_).past_date == 2'000'000);
}

TEST_CASE("a recalled lot is on the shelf and not counted, until it is released") {
    SoapShop s;
    s.stock_all(2);
    auto& hold = s.add<Hold>();
    hold.date = day_of(2026, 5, 1);
    hold.lot = s.all<AlreadyHere>().front().lot;
    hold.why = "recalled";
    CHECK(of(can_make(s.shop(), s.ledger(), s.bar, 1, s.today), s.oil_).held == 2'000'000);
    CHECK(can_make(s.shop(), s.ledger(), s.bar, 1, s.today).most_loaves == 0);
    s.plan(day_of(2026, 6, 20), 1);
    CHECK(reorder(s.shop(), s.ledger()).rows.front().there == 0);
    auto& release = s.add<Release>();
    release.date = day_of(2026, 5, 20);
    release.lot = s.all<AlreadyHere>().front().lot;
    release.why = "cleared";
    CHECK(can_make(s.shop(), s.ledger(), s.bar, 1, s.today).most_loaves == 2);
}

TEST_CASE("nothing on the shelf, no such bar, no lye on record: each is said") {
    SoapShop s;
    CHECK(can_make(s.shop(), s.ledger(), s.bar, 1, s.today).most_loaves == 0);
    const CanMake unknown = can_make(s.shop(), s.ledger(), s.oil_, 1, s.today);
    CHECK(unknown.loaf.unsaid == std::vector{Unsaid::no_such_recipe});
    CHECK(unknown.most_loaves == 0);
    s.at(s.lye).purpose = Purpose::other;
    CHECK(can_make(s.shop(), s.ledger(), s.bar, 1, s.today).loaf.unsaid == std::vector{Unsaid::no_lye});
    CHECK(can_make(s.shop(), s.ledger(), s.bar, -3, s.today).loaves == 0);
}
