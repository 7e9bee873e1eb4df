// What a bar costs to make again and what it should sell for.
#include "domain/decisions/price_changes.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/domain/decisions/blue_shop.h"
#include "tests/domain/decisions/soap_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {
const BarPrice& of(const Prices& answer, Key<Material> bar) {
    return *std::ranges::find(answer.bars, bar, &BarPrice::bar);
}

// One loaf poured in 100 minutes, ten good bars; oil 8 a kilogram, lye 10 a kilogram, water 1 a litre, bands 0.10.
struct Priced : SoapShop {
    Priced() {
        offer(oil_, grams(1'000), Money::units(8), 5);
        offer(lye, grams(1'000), Money::units(10), 5);
        offer(water, {Quantity::microlitres(1'000'000), Unit::l, Mark::measured}, Money::units(1), 5);
        offer(band, pieces(100), Money::units(10), 5);
        stock_all(1);
        const auto poured = batch(day_of(2026, 2, 1), loaf, bar);
        auto& time = add<BatchTime>(poured);
        time.who = who;
        time.time = minutes(100);
        cut(day_of(2026, 2, 2), poured, 10, 0, day_of(2026, 3, 2));
        auto& price = add<Price>();
        price.from = day_of(2026, 1, 1);
        price.bar = bar;
        price.shelf = Money::units(4);
    }
};
}  // namespace

TEST_CASE("the recipe at today's offers: 8 of oil, 0.95 of lye, 0.19 of water and a band, over ten bars") {
    Priced s;
    const Prices answer = prices(s.shop(), s.ledger());
    const BarPrice& bar = of(answer, s.bar);
    REQUIRE(bar.replacement);
    CHECK(bar.replacement->materials == Approx((8 + 0.95 + 0.19) / 10 + 0.1).epsilon(1e-3));
    CHECK(bar.replacement->minutes == Approx(10));
    CHECK(bar.replacement->labour == Approx(2));
    CHECK(bar.floor == Approx(bar.replacement->materials));
    CHECK(bar.shelf == Approx(4));
    CHECK(bar.per_hour == Approx((4 - bar.replacement->materials) * 6));
    CHECK(bar.for_hour == Approx(bar.replacement->materials + 2));
    CHECK(bar.for_margin == Approx((bar.replacement->materials + 2) / 0.6));
    CHECK(*bar.advised >= *bar.for_margin);
    CHECK(bar.under_aim);
}

TEST_CASE("a dearer offer moves the replacement cost and not what was booked; rejects make the rest dearer") {
    Priced s;
    const BarPrice before = of(prices(s.shop(), s.ledger()), s.bar);
    s.all<Offer>().front().price = Money::units(18);
    const BarPrice dearer = of(prices(s.shop(), s.ledger()), s.bar);
    CHECK(dearer.replacement->materials - before.replacement->materials == Approx(1));
    CHECK(dearer.booked_full == before.booked_full);
    CHECK(*dearer.advised > *before.advised);
    s.all<Cut>().front().rejected = 2;
    CHECK(of(prices(s.shop(), s.ledger()), s.bar).replacement->materials ==
          Approx(dearer.replacement->materials * 10 / 8).epsilon(1e-3));
}

TEST_CASE("what nobody offers leaves no figure, and says what is missing") {
    Priced s;
    std::erase_if(s.all<Offer>(), [&](const Offer& offer) { return offer.material == s.lye; });
    const Prices answer = prices(s.shop(), s.ledger());
    const BarPrice& bar = of(answer, s.bar);
    CHECK_FALSE(bar.replacement);
    CHECK_FALSE(bar.advised);
    CHECK(bar.without_price == std::vector{s.lye});
}

TEST_CASE("a margin that no price reaches, no target, no price list: blanks, and no figure is not a number") {
    Priced s;
    CHECK_FALSE(of(prices(s.shop(), s.ledger(), {.margin = 1}), s.bar).for_margin);
    s.all<Pay>().front().per_hour.reset();
    s.all<Price>().clear();
    const Prices answer = prices(s.shop(), s.ledger());
    CHECK_FALSE(answer.hourly_target);
    CHECK_FALSE(of(answer, s.bar).for_hour);
    CHECK_FALSE(of(answer, s.bar).margin);
    CHECK_FALSE(of(answer, s.bar).under_aim);
}

TEST_CASE("the margin and the markup are the maker's from the day they are put down; until then the program's own") {
    Priced s;
    CHECK(price_aim(s.shop(), s.ledger().as_of).margin_is_default);
    auto& first = s.add<PriceRule>();
    first.from = day_of(2026, 1, 1);
    first.markup = Ratio{150, 100};
    first.price_step = Money::hundredths(25);
    const BarPrice by_markup = of(prices(s.shop(), s.ledger()), s.bar);
    CHECK_FALSE(by_markup.for_margin);
    CHECK(by_markup.for_markup == Approx(2.5 * by_markup.replacement->full()));
    CHECK(std::fmod(*by_markup.advised, 0.25) == Approx(0));
    CHECK(*by_markup.advised >= *by_markup.for_markup);

    auto& later = s.add<PriceRule>();  // says nothing of markup and step: they stay
    later.from = day_of(2026, 2, 1);
    later.margin = Ratio{90, 100};
    const Prices answer = prices(s.shop(), s.ledger());
    CHECK(answer.aim.markup == Approx(1.5));
    CHECK(answer.aim.price_step == Approx(0.25));
    CHECK(of(answer, s.bar).for_margin == Approx(by_markup.replacement->full() / 0.1));
    CHECK(price_aim(s.shop(), day_of(2026, 1, 31)).margin == std::nullopt);
    CHECK(price_aim(s.shop(), day_of(2025, 12, 31)).margin == Approx(0.40));
}

TEST_CASE("a home-grown bar stands on what growing cost, with the bought shade beside it") {
    BlueShop s;
    for (const auto material : s.complete_the_soap())
        s.offer(day_of(2026, 1, 1), material, grams(1'000), Money::units(10));
    s.offer(day_of(2026, 1, 1), s.bought_blue, grams(1'000), Money::units(10));
    s.offer(day_of(2026, 1, 1), s.paper, pieces(10), Money::units(10));
    const Ledger ledger = s.ledger();
    const auto grown = s.verdict().figures.pigment;
    const Prices answer = prices(s.shop(), ledger);
    const BarPrice& own = of(answer, s.own_bar);
    const BarPrice& bought = of(answer, s.bought_bar);
    REQUIRE(own.replacement);
    REQUIRE(bought.replacement);
    REQUIRE(grown.cash_cost_per_gram);
    CHECK(own.replacement->minutes > bought.replacement->minutes);
    CHECK(own.replacement->colour > 0);
    CHECK(own.colour_bought == Approx(bought.replacement->colour));
}

TEST_CASE(
    "a supplier's new price is seen in what the bar costs, and a bar that fell under its aim with what restores it") {
    Priced s;
    const Day before = day_of(2026, 4, 1);
    const Prices then = prices(s.shop(), replay(s.shop(), before));
    const Prices same = prices(s.shop(), s.ledger());
    CHECK(price_changes(s.shop(), s.ledger(), same, before).empty());
    // Priced just so that it reaches its aim; then the oil goes up from 8 to 11.
    auto& price = s.all<Price>().front();
    price.shelf = Money::millionths(static_cast<std::int64_t>(*of(then, s.bar).advised * 1e6));
    s.offer(s.oil_, grams(1'000), Money::units(11), 5);
    s.all<Offer>().back().noted = s.all<Offer>().back().from = day_of(2026, 5, 1);
    const Prices now = prices(s.shop(), s.ledger());
    const auto changes = price_changes(s.shop(), s.ledger(), now, before);
    REQUIRE(changes.size() == 1);
    CHECK(changes[0].cost_now - changes[0].cost_then == Approx(0.30));
    CHECK(changes[0].fell_under);
    CHECK(*changes[0].restores > number(price.shelf));
    CHECK(*changes[0].restores == Approx(*of(now, s.bar).advised));
    // Nothing was known of it on that day itself.
    CHECK(price_changes(s.shop(), s.ledger(), now, s.today).empty());
}

TEST_CASE(
    "for shops: no selling time, the wholesale channel's fees; the price put down before that of the last order") {
    Priced s;
    BarPrice bar = of(prices(s.shop(), s.ledger()), s.bar);
    CHECK_FALSE(bar.wholesale.price);
    CHECK(bar.wholesale.floor == Approx(bar.replacement->materials));
    CHECK(bar.wholesale.full_cost == Approx(bar.replacement->full()));
    const auto order = s.sale(day_of(2026, 4, 1));
    s.all<Sale>().back().channel = Channel::wholesale;
    s.sold(order, s.bar, 2, Money::units(2));
    auto& fee = s.add<ChannelFee>();
    fee.from = day_of(2026, 1, 1);
    fee.channel = Channel::wholesale;
    fee.share = Ratio{1, 5};
    fee.per_bar = Money::hundredths(10);
    bar = of(prices(s.shop(), s.ledger()), s.bar);
    CHECK(bar.wholesale.price == Approx(2));
    CHECK_FALSE(bar.wholesale.listed);
    CHECK(bar.wholesale.floor == Approx((bar.replacement->materials + 0.1) / 0.8));
    CHECK(bar.wholesale.left == Approx(2 * 0.8 - 0.1 - bar.replacement->without_labour()));
    auto& listed = s.add<WholesalePrice>();
    listed.from = day_of(2026, 5, 1);
    listed.bar = s.bar;
    listed.price = Money::units(3);
    bar = of(prices(s.shop(), s.ledger()), s.bar);
    CHECK(bar.wholesale.price == Approx(3));
    CHECK(bar.wholesale.listed);
    s.all<WholesalePrice>().back().from = day_of(2026, 6, 2);  // tomorrow
    CHECK(of(prices(s.shop(), s.ledger()), s.bar).wholesale.price == Approx(2));
}

TEST_CASE("a bundle is held against the dearest kind on its table; the newest price of those called alike") {
    Priced s;
    const auto fair = [&](Day day, std::string what, int bars, Money price, int sold) {
        auto& fact = s.add<Fair>();
        fact.date = day;
        const auto key = fact.key;
        s.add<FairLine>(key).bar = s.bar;
        auto& bundle = s.add<FairBundle>(key);
        bundle.what = std::move(what);
        bundle.bars = bars;
        bundle.price = price;
        bundle.sold = sold;
    };
    fair(day_of(2026, 3, 1), "three", 3, Money::units(9), 4);
    fair(day_of(2026, 5, 1), "three", 3, Money::units(3), 2);
    fair(day_of(2026, 4, 1), "three", 3, Money::units(3), 1);
    fair(day_of(2026, 4, 2), "ten", 10, Money::units(15), 1);
    fair(day_of(2026, 4, 3), "two", 2, Money::units(8), 1);
    fair(day_of(2024, 4, 3), "long ago", 2, Money::units(8), 1);
    fair(day_of(2026, 5, 3), "none", 0, Money::units(8), 1);
    const Prices answer = prices(s.shop(), s.ledger());
    REQUIRE(answer.bundles.size() == 3);
    const BarPrice& bar = of(answer, s.bar);  // 1.014 of materials, 3.014 with two of own time
    const BundlePrice& ten = answer.bundles[0];
    CHECK(ten.what == "ten");
    CHECK(ten.under_floor.empty());
    CHECK(ten.under_cost == std::vector{s.bar});
    CHECK(ten.clears_cost == Approx(10 * bar.replacement->full()));
    const BundlePrice& three = answer.bundles[1];
    CHECK(three.price == Approx(3));
    CHECK(three.sold == 3);
    CHECK(three.under_floor == std::vector{s.bar});
    CHECK(three.under_cost.empty());
    CHECK(three.clears_floor == Approx(3 * *bar.floor));
    const BundlePrice& two = answer.bundles[2];
    CHECK(two.under_floor.empty());
    CHECK(two.under_cost.empty());
    // What it costs is not known: held against nothing.
    s.all<Offer>().clear();
    s.all<AlreadyHere>().clear();
    const Prices blind = prices(s.shop(), s.ledger());
    REQUIRE(blind.bundles.size() == 3);
    CHECK(blind.bundles[0].of.empty());
    CHECK_FALSE(blind.bundles[0].clears_floor);
}
