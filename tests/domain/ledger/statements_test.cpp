// What a period earned, the hours, the money and the write-down of one small shop, reckoned by hand.
#include <doctest/doctest.h>

#include "domain/ledger/hours.h"
#include "domain/ledger/tie_outs.h"
#include "domain/ledger/write_down.h"
#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Period kYear{day_of(2026, 1, 1), day_of(2026, 12, 31)};

constexpr Day on(unsigned month, unsigned day) {
    return day_of(2026, month, day);
}

// 100 bars that cost 2 each and 10 minutes of Ann's; sales tax 20 % from July.
struct Stall : ShopBuilder {
    Key<Material> bar = made("bar", MaterialKind::bar);
    Key<Person> ann = person(day_of(2025, 1, 1), Money::units(12));
    Key<Lot> bars;

    Stall() {
        const auto oil = material("oil", Purpose::oil);
        delivery(day_of(2025, 12, 1), oil, grams(10'000), Money::units(190), Money::units(10));
        const auto loaf = batch(day_of(2025, 12, 2), recipe(100), bar);
        uses<BatchUse>(loaf, oil, grams(10'000));
        add<BatchTime>(loaf).time = minutes(1'000);
        bars = cut(day_of(2025, 12, 3), loaf, 100, 0, day_of(2025, 12, 3));
        auto& price = add<Price>();
        price.from = day_of(2025, 1, 1);
        price.bar = bar;
        price.shelf = Money::units(6);
        auto& tax = add<SalesTax>();
        tax.from = on(7, 1);
        tax.rate = {20, 100};
    }

    Fair& fair(Day day, int sold) {
        auto& fact = add<Fair>();
        fact.date = day;
        fact.fee = Money::units(25);
        fact.travel = Money::units(5);
        const auto key = fact.key;
        auto& line = add<FairLine>(key);
        line.bar = bar;
        line.taken = sold + 3;
        line.back = 3;
        return at(key);
    }

    Ledger books(Day day = kYear.last) const { return replay(shop(), day); }
    Earned earned_in(Period period) const { return earned(shop(), books(), period); }
};

bool all_tie(const Shop& shop, const Ledger& ledger) {
    return std::ranges::all_of(tie_outs(shop, ledger, kYear), [](const TieOut& each) { return each.ties(); });
}

}  // namespace

TEST_CASE("a counted fair is what was in the tin, one that was not is bars at their price") {
    Stall b;
    auto& counted = b.fair(on(5, 2), 10);
    counted.change_float = Money::units(40);
    counted.cash_in_tin = Money::units(70);
    counted.card_takings = Money::units(28);
    b.fair(on(8, 1), 5);
    const Ledger ledger = b.books();
    const auto all = takings(b.shop(), ledger, kYear);
    REQUIRE(all.size() == 2);
    CHECK(all[0].gross == Money::units(58));
    CHECK(all[0].by_price == Money::units(60));
    CHECK(all[0].tax == Money{});
    CHECK(all[1].gross == Money::units(30));
    CHECK(all[1].tax == Money::units(5));
    const Earned year = b.earned_in(kYear);
    CHECK(year.gross == Money::units(88));
    CHECK(year.net() == Money::units(83));
    CHECK(year.tin_difference == -Money::units(2));
    CHECK(year.cost_of_sales.cash() == Money::units(30));
    CHECK(year.cost_of_sales.full() == Money::units(60));
    CHECK(year.gross_margin_without_labour() == Money::units(53));
    CHECK(year.stalls == Money::units(50));
    CHECK(year.travel == Money::units(10));
    CHECK(year.earned_without_labour() == -Money::units(7));
    CHECK(year.earned() == -Money::units(37));
    CHECK(all_tie(b.shop(), ledger));
}

TEST_CASE("losses and gifts stand by their reason") {
    Stall b;
    b.loss(on(2, 1), b.bar, pieces(3), LossReason::spoiled);
    b.loss(on(2, 2), b.bar, pieces(2), LossReason::sample);
    const Earned year = b.earned_in(kYear);
    CHECK(year.losses[static_cast<std::size_t>(LossKind::spoiled)].cash() == Money::units(6));
    CHECK(year.lost().full() == Money::units(12));
    CHECK(year.losses[static_cast<std::size_t>(LossKind::sample)].cash() == Money::units(4));
    CHECK(year.given().cash() == Money::units(4));
    CHECK(year.earned_without_labour() == -Money::units(10));
}

TEST_CASE("running costs that bars took up beyond what accrued stand with the bars here and the bars gone") {
    ShopBuilder b;
    const auto bar = b.made("bar", MaterialKind::bar);
    auto& overhead = b.add<Overhead>();
    overhead.from = on(1, 1);
    overhead.per_year = Money::units(100);
    overhead.normal_bars = 100;
    const auto loaf = b.batch(on(2, 1), b.recipe(200), bar);
    b.cut(on(2, 2), loaf, 200, 0, on(2, 2));
    b.sold(b.sale(on(3, 1)), bar, 50, Money::units(4));
    const Ledger ledger = replay(b.shop(), kYear.last);
    const Earned year = earned(b.shop(), ledger, kYear);
    CHECK(year.overhead_accrued == Money::units(100));
    CHECK(year.overhead_absorbed == Money::units(200));
    CHECK(year.under_absorbed() == Money{});
    CHECK(year.over_absorbed_in_stock == Money::units(75));
    CHECK(year.over_absorbed_in_sales == Money::units(25));
    // 200 taken, 50 absorbed in what was sold, of which 25 was too much.
    CHECK(year.earned() == Money::units(175));
    CHECK(all_tie(b.shop(), ledger));
}

TEST_CASE("hours stand by stage and person, and those before the books apart") {
    Stall b;
    const auto fair = b.fair(on(5, 2), 10).key;
    auto& time = b.add<FairTime>(fair);
    time.time = minutes(300);
    const Ledger ledger = b.books();
    const auto late = hours(b.shop(), ledger, kYear);
    REQUIRE(late.size() == 1);
    CHECK(late[0].stage == Stage::fair);
    CHECK(late[0].who == b.ann);
    CHECK(late[0].time == Minutes::whole(300));
    CHECK(late[0].labour == Money::units(60));
    CHECK(hours(b.shop(), ledger, Period::up_to(kYear.last)).size() == 2);
}

TEST_CASE("money in and out knows no stock") {
    Stall b;
    auto& fair = b.fair(on(5, 2), 10);
    fair.cash_in_tin = Money::units(35);
    fair.card_takings = Money::units(25);
    auto& bill = b.add<PaidOut>();
    bill.date = on(6, 1);
    bill.what = "insurance";
    bill.amount = Money::units(62);
    const Ledger ledger = b.books();
    const MoneyFlow year = money_flow(b.shop(), ledger, kYear);
    CHECK(year.in[static_cast<std::size_t>(TakenAt::fair_cash)] == Money::units(35));
    CHECK(year.in[static_cast<std::size_t>(TakenAt::fair_card)] == Money::units(25));
    CHECK(year.total_out() == Money::units(25 + 5 + 62));
    const MoneyFlow before = money_flow(b.shop(), ledger, {day_of(2025, 1, 1), day_of(2025, 12, 31)});
    CHECK(before.out[static_cast<std::size_t>(PaidFor::goods)] == Money::units(190));
    CHECK(before.out[static_cast<std::size_t>(PaidFor::carriage)] == Money::units(10));
    CHECK(before.total_in() == Money{});
}

TEST_CASE("bars that fetch less than they cost are written down to price less tax and wrapping to come, no further") {
    Stall b;
    const auto band = b.material("band", Purpose::wrapping, HeldAs::count);
    b.delivery(on(1, 5), band, pieces(1'000), Money::units(100));
    const auto recipe = b.shop().all<Recipe>().front().key;
    auto& colouring = b.add<RecipeColouring>(recipe);
    colouring.bar = b.bar;
    auto& wrapping = b.add<RecipeWrapping>(recipe);
    wrapping.material = band;
    wrapping.per_bar = pieces(1);
    CHECK(write_down(b.shop(), b.books(), on(6, 30)).total() == Money{});

    auto& cheap = b.add<Price>();
    cheap.from = on(8, 1);
    cheap.bar = b.bar;
    cheap.shelf = Money::hundredths(216);  // 1.80 without the tax, 1.70 wrapped
    const Ledger ledger = b.books();
    const WriteDown down = write_down(b.shop(), ledger, on(8, 1));
    const auto bars =
        std::ranges::find(down.items, StockKind::bars_ready, [](const Valued& each) { return each.item.kind; });
    REQUIRE(bars != down.items.end());
    CHECK(bars->cost == Money::units(200));
    CHECK(bars->net_price == Money::units(180));
    CHECK(bars->wrapping_to_come == Money::units(10));
    CHECK(bars->worth == Money::units(170));
    CHECK(bars->write_down() == Money::units(30));
    CHECK(down.of(StockKind::bars_ready) == Money::units(30));
    // The books go on at cost.
    CHECK(stock_value(b.shop(), ledger, on(8, 1))[StockKind::bars_ready].cash() == Money::units(200));
}

// IAS 2, paragraph 32.
TEST_CASE("a material is written down only when the bars made from it are under cost, then to its new price") {
    Stall b;
    const auto oil = b.shop().all<Material>().at(1).key;
    b.delivery(on(1, 5), oil, grams(1'000), Money::units(20));
    auto& offer = b.add<Offer>();
    offer.noted = offer.from = on(2, 1);
    offer.material = oil;
    offer.pack = grams(1'000);
    offer.price = Money::units(12);
    const auto recipe = b.shop().all<Recipe>().front().key;
    b.add<RecipeColouring>(recipe).bar = b.bar;
    b.add<RecipePart>(recipe).material = oil;
    CHECK(write_down(b.shop(), b.books(), on(3, 1)).total() == Money{});
    auto& cheap = b.add<Price>();
    cheap.from = on(4, 1);
    cheap.bar = b.bar;
    cheap.shelf = Money::units(1);
    const WriteDown down = write_down(b.shop(), b.books(), on(4, 1));
    CHECK(down.of(StockKind::raw) == Money::units(8));
    CHECK(down.of(StockKind::bars_ready) == Money::units(100));
    // The price comes back, and so does the value.
    auto& back = b.add<Price>();
    back.from = on(5, 1);
    back.bar = b.bar;
    back.shelf = Money::units(6);
    CHECK(write_down(b.shop(), b.books(), on(5, 1)).total() == Money{});
}
