// Which bar brings most for an hour, and what to pour from what is there.
#include "domain/decisions/earns_best.h"

#include <doctest/doctest.h>

#include "tests/domain/decisions/blue_shop.h"
#include "tests/domain/decisions/soap_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

const BarEarns& of(const EarnsBest& answer, Key<Material> bar) {
    return *std::ranges::find(answer.bars, bar, &BarEarns::bar);
}
const ShelfLimit& limit(const EarnsBest& answer, std::optional<Key<Material>> material) {
    return *std::ranges::find(answer.limits, material, &ShelfLimit::material);
}

// Two soaps of ten bars a loaf: the first takes 1,000 g of oil and two hours and sells at 4, the second 500 g and
// three hours and sells at 6. Oil is 8 a kilogram; lye, water and bands come to nothing worth a price but a penny's.
struct TwoSoaps : SoapShop {
    Key<Material> fine = made("fine bar", MaterialKind::bar);
    Key<Recipe> fine_loaf = recipe(10);

    TwoSoaps() {
        at(fine_loaf).lye_concentration = {1, 3};
        auto& part = add<RecipePart>(fine_loaf);
        part.material = oil_;
        part.amount = grams(500);
        auto& wrap = add<RecipeWrapping>(fine_loaf);
        wrap.material = band;
        wrap.per_bar = pieces(1);
        add<RecipeColouring>(fine_loaf).bar = fine;
        offer(oil_, grams(1'000), Money::units(8), 5);
        offer(lye, grams(1'000), Money::units(10), 5);
        offer(water, {Quantity::microlitres(1'000'000), Unit::l, Mark::measured}, Money::units(1), 5);
        offer(band, pieces(100), Money::units(10), 5);
        stock_all(7);
        poured(loaf, bar, 120);
        poured(fine_loaf, fine, 180);
        price(bar, Money::units(4));
        price(fine, Money::units(6));
        // All ten of each went in the last year.
        const auto gone = sale(day_of(2026, 4, 1));
        sold(gone, bar, 10, Money::units(4));
        sold(gone, fine, 10, Money::units(6));
    }

    EarnsBest ask(const EarnsBestTerms& terms) const { return earns_best(shop(), ledger(), terms); }

private:
    void poured(Key<Recipe> recipe, Key<Material> what, std::int64_t time) {
        const auto poured = batch(day_of(2026, 2, 1), recipe, what);
        uses<BatchUse>(poured, oil_, grams(recipe == loaf ? 1'000 : 500));
        auto& line = add<BatchTime>(poured);
        line.who = who;
        line.time = minutes(time);
        cut(day_of(2026, 2, 2), poured, 10, 0, day_of(2026, 3, 2));
    }
    void price(Key<Material> what, Money shelf) {
        auto& fact = add<Price>();
        fact.from = day_of(2026, 1, 1);
        fact.bar = what;
        fact.shelf = shelf;
    }
};

}  // namespace

TEST_CASE("the first brings 29.86 in two hours, the second 54.43 in three: an hour of the second brings more") {
    const TwoSoaps s;
    const EarnsBest answer = s.ask({.months = 12, .hours = 5.0, .scarce = {}});
    const BarEarns& plain = of(answer, s.bar);
    const BarEarns& fine = of(answer, s.fine);
    // 8 of oil, 0.95 of lye, 0.19 of water, 1 of bands; half of all but the bands.
    CHECK(*plain.brings == Approx(40 - 10.14).epsilon(1e-3));
    CHECK(*fine.brings == Approx(60 - 5.57).epsilon(1e-3));
    CHECK(*plain.hours == Approx(2));
    CHECK(*fine.hours == Approx(3));
    CHECK(*plain.per_hour == Approx(29.86 / 2).epsilon(1e-3));
    CHECK(*fine.per_hour == Approx(54.43 / 3).epsilon(1e-3));
    CHECK(answer.bars.front().bar == s.fine);
    CHECK(plain.wanted == 1);
    CHECK(fine.wanted == 1);
    CHECK(answer.hours_from == HoursFrom::asked);
    CHECK(plain.make + fine.make == 2);
    CHECK(answer.brings == Approx(29.86 + 54.43).epsilon(1e-3));
    CHECK(limit(answer, std::nullopt).use.stops.empty());
}

TEST_CASE("with three hours the second is poured; with the oil scarce each gram brings more in it") {
    const TwoSoaps s;
    const EarnsBest answer = s.ask({.months = 12, .hours = 3.0, .scarce = s.oil_});
    CHECK(of(answer, s.fine).make == 1);
    CHECK(of(answer, s.bar).make == 0);
    // One more hour goes to the first in parts of a loaf.
    CHECK(limit(answer, std::nullopt).use.step_brings == Approx(29.86 / 2).epsilon(1e-3));
    CHECK(limit(answer, std::nullopt).use.stops.size() == 1);
    CHECK(*of(answer, s.fine).per_scarce == Approx(54.43 / 500'000).epsilon(1e-3));
    CHECK(*of(answer, s.bar).per_scarce == Approx(29.86 / 1'000'000).epsilon(1e-3));
    // 7,000 g came, 1,500 g were poured.
    CHECK(answer.scarce_there == Approx(5'500'000));
    CHECK(of(answer, s.fine).alone == Approx(1));
}

TEST_CASE("hours not said are those of the bench in the last year, and customers set the bound") {
    const TwoSoaps s;
    const EarnsBest answer = s.ask({.months = 6, .hours = {}, .scarce = {}});
    CHECK(answer.hours_from == HoursFrom::bench_records);
    CHECK(*answer.hours == Approx(2.5));
    CHECK(of(answer, s.fine).wanted == 1);  // five bars: one loaf, begun in full
    CHECK(of(answer, s.bar).wanted == 1);
    // Three hours are not there: the first, of two, is what can be poured.
    CHECK(of(answer, s.fine).make == 0);
    CHECK(of(answer, s.bar).make == 1);
}

TEST_CASE("what stands on the shelf is not wanted again, and without oil nothing can be poured unless it is ordered") {
    TwoSoaps s;
    s.all<SaleLine>().front().bars = 4;  // six left: more than four a year
    EarnsBest answer = s.ask({.months = 12, .hours = 5.0, .scarce = {}});
    CHECK(of(answer, s.bar).on_shelf == Approx(6));
    CHECK(of(answer, s.bar).wanted == 0);
    s.loss(day_of(2026, 5, 1), s.oil_, grams(5'400), LossReason::spilled);
    answer = s.ask({.months = 12, .hours = 5.0, .scarce = {}});
    CHECK(of(answer, s.fine).make == 0);
    CHECK(of(answer, s.fine).make_if_ordered == 1);
    CHECK(answer.brings == 0);
    const ShelfLimit& oil = limit(answer, s.oil_);
    CHECK(oil.can_be_bought);
    CHECK(oil.there == Approx(100'000));
    // 100 g more are a fifth of a loaf.
    CHECK(oil.use.step_brings == Approx(54.43 / 5).epsilon(1e-3));
}

TEST_CASE("own powder on the shelf is there and paid for; grown again its hours at bed and vat count") {
    BlueShop s;
    for (const auto material : s.complete_the_soap()) {
        s.offer(day_of(2026, 1, 1), material, grams(1'000), Money::units(10));
        s.already_here(day_of(2026, 1, 1), material, grams(10'000), Money::units(100));
    }
    const Ledger ledger = s.ledger();
    const EarnsBest answer = earns_best(s.shop(), ledger, {.months = 60, .hours = 10.0, .scarce = {}});
    const BarEarns& own = of(answer, s.own_bar);
    REQUIRE(own.brings);
    CHECK(own.wanted == 1);  // three sold a year, seven on the shelf: eight to come in five years
    CHECK(own.make == 1);
    const Prices known = prices(s.shop(), ledger);
    const BarPrice& price = *std::ranges::find(known.bars, s.own_bar, &BarPrice::bar);
    const double kept = known.terms.kept(6);
    CHECK(*own.brings == Approx((kept - price.replacement->materials + price.replacement->colour) * own.good_bars));
    CHECK(*own.grown_again == Approx((kept - price.replacement->materials) / (price.replacement->minutes / 60)));
    CHECK(*own.per_hour > *own.grown_again);
    const ShelfLimit& powder = limit(answer, s.powder);
    CHECK_FALSE(powder.can_be_bought);
    CHECK(powder.there == Approx(36'000));  // 40 g dried, 4 g poured
    CHECK(powder.use.used > 0);
}

TEST_CASE("an empty shop, and one without prices or hours, answer without a figure") {
    const ShopBuilder empty;
    CHECK(earns_best(empty.shop(), replay(empty.shop(), day_of(2026, 6, 1))).bars.empty());
    TwoSoaps s;
    s.all<Price>().clear();
    const EarnsBest answer = s.ask({});
    CHECK(of(answer, s.bar).no_price);
    CHECK_FALSE(of(answer, s.bar).per_hour);
    s.all<BatchTime>().clear();
    CHECK_FALSE(of(s.ask({}), s.bar).hours);
    CHECK(s.ask({}).hours_from == HoursFrom::nothing);
}
