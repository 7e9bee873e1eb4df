// Poured off, out at a shop, brought back, sat at, worn out: what each does to the books.
#include <doctest/doctest.h>

#include "domain/decisions/base_loaf.h"
#include "domain/decisions/selling.h"
#include "domain/decisions/tin.h"
#include "domain/ledger/hours.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/takings.h"
#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day kSpring = day_of(2026, 3, 1);
constexpr Day day(int n) {
    return kSpring + Days{n};
}

struct Bars : ShopBuilder {
    Key<Material> bar = made("bar", MaterialKind::bar);
    Key<Lot> lot = already_here(day(0), bar, pieces(20), Money::units(40));

    Key<OutAtShop> out(int on, int bars, std::optional<Ratio> share = Ratio{1, 4}) {
        auto& fact = add<OutAtShop>();
        fact.date = day(on);
        fact.where = "the corner shop";
        fact.bar = bar;
        fact.bars = bars;
        fact.price = Money::units(6);
        fact.share = share;
        return fact.key;
    }
    void settle(int on, Key<OutAtShop> from, int sold, int back) {
        auto& fact = add<OutSettled>();
        fact.date = day(on);
        fact.out = from;
        fact.sold = sold;
        fact.back = back;
    }
    void returned(int on, Key<Lot> from, int bars, Fit fit) {
        auto& fact = add<Returned>();
        fact.date = day(on);
        fact.lot = from;
        fact.bars = bars;
        fact.refund = Money::units(5 * bars);
        fact.fit = fit;
    }
};

struct Split : ShopBuilder {
    Key<Material> oil = material("oil", Purpose::oil);
    Key<Material> dye = material("ochre", Purpose::colourant);
    Key<Material> bar = made("bar", MaterialKind::bar);
    Key<Recipe> loaf = recipe(10);
    Key<Batch> first, second;

    Split() {
        delivery(day(0), oil, grams(1'000), Money::units(80));
        delivery(day(0), dye, grams(10), Money::units(10));
        second = batch(day(1), loaf, bar);  // typed before the one it comes from
        first = batch(day(1), loaf, bar);
        uses<BatchUse>(first, oil, grams(1'000));
        uses<BatchUse>(second, dye, grams(10));
        at(second).split_from = first;
        at(second).split_share = Ratio{1, 4};
    }
    Money holds(Key<Batch> batch, const Ledger& ledger) {
        const auto place = static_cast<Account>(shop().find(batch) - all<Batch>().data());
        return ledger.balances[ledger.accounts.batches + place].materials;
    }
};

}  // namespace

TEST_CASE("a batch poured off takes its share of the other, whichever was typed first") {
    Split b;
    const Ledger ledger = replay(b.shop(), day(1));
    CHECK(b.holds(b.first, ledger) == Money::units(60));
    CHECK(b.holds(b.second, ledger) == Money::units(30));
    CHECK(ledger.findings.empty());
}

TEST_CASE("poured off before it was poured, after it was cut, or who knows how much of it: said, and nothing moves") {
    Split b;
    SUBCASE("before") {
        b.at(b.first).date = day(2);
        CHECK(has(replay(b.shop(), day(2)), FindingCode::split_before_pouring));
    }
    SUBCASE("after") {
        b.at(b.second).date = day(3);
        b.cut(day(2), b.first, 10, 0, day(30));
        const Ledger ledger = replay(b.shop(), day(3));
        CHECK(has(ledger, FindingCode::split_after_cut));
        CHECK(b.holds(b.second, ledger) == Money::units(10));
    }
    SUBCASE("no share") {
        b.at(b.second).split_share.reset();
        const Ledger ledger = replay(b.shop(), day(2));
        CHECK(has(ledger, FindingCode::split_without_share));
        CHECK(b.holds(b.first, ledger) == Money::units(80));
    }
}

TEST_CASE("the plain cost of loaves poured off counts once, and the colour not at all") {
    Split b;
    b.cut(day(2), b.second, 10, 0, day(30));
    const auto base = [&](Day on) {
        const Ledger ledger = replay(b.shop(), on);
        return base_loaf({b.shop(), ledger}, b.at(b.loaf), {day(0), on});
    };
    CHECK(base(day(2)).cost.materials == Money::units(20));  // the other is not cut yet
    b.cut(day(3), b.first, 10, 0, day(30));
    CHECK(base(day(3)).cost.materials == Money::units(80));
    CHECK(base(day(3)).loaves == 2);
}

TEST_CASE("bars at a shop are stock until they are sold; the shop's share is a cost of selling") {
    Bars b;
    const auto out = b.out(1, 12);
    Ledger ledger = replay(b.shop(), day(1));
    CHECK(state(b.shop(), ledger, b.lot).left == 8'000);
    CHECK(materials(ledger, Boundary::sold) == Money{});
    CHECK(cost_partition(b.shop(), ledger, day(1)).stock.materials == Money::units(40));
    CHECK(ledger.sold.empty());

    b.settle(9, out, 5, 4);
    ledger = replay(b.shop(), day(9));
    CHECK(materials(ledger, Boundary::sold) == Money::units(10));
    CHECK(state(b.shop(), ledger, b.lot).left == 12'000);
    CHECK(ledger.balance(Boundary::selling).overhead == Money::hundredths(750));  // a quarter of 30
    REQUIRE(ledger.sold.size() == 1);
    CHECK(ledger.sold[0].bars == 5'000);
    CHECK(quantity_partitions(b.shop(), ledger, day(9))[0].stock == 15'000);
    const Selling all = selling({b.shop(), ledger}, {day(0), day(9)});
    CHECK(all.takings == doctest::Approx(30));
    CHECK(all.fee_share == doctest::Approx(0.25));
    CHECK(*all.cost_per_bar == doctest::Approx(0));

    b.settle(10, out, 5, 0);  // three are out
    ledger = replay(b.shop(), day(10));
    CHECK(has(ledger, FindingCode::settled_more_than_out));
    CHECK(materials(ledger, Boundary::sold) == Money::units(16));
    b.settle(0, out, 1, 0);
    CHECK(has(replay(b.shop(), day(10)), FindingCode::settled_before_out));
}

TEST_CASE("bars back from a shop go into the lots they came from, at what they cost there") {
    Bars b;
    const auto dear = b.already_here(day(1), b.bar, pieces(10), Money::units(100));
    const auto out = b.out(1, 25);  // 20 at 2.00, 5 at 10.00
    b.settle(2, out, 20, 5);
    const Ledger ledger = replay(b.shop(), day(2));
    CHECK(state(b.shop(), ledger, b.lot).left == 0);
    CHECK(state(b.shop(), ledger, dear).left == 10'000);
    CHECK(state(b.shop(), ledger, dear).cost.materials == Money::units(100));
}

TEST_CASE("bars brought back cost what bars of their lot left at; spoiled ones are lost; the refund is taken off") {
    Bars b;
    b.sold(b.sale(day(1)), b.bar, 10, Money::units(5), b.lot);
    b.returned(2, b.lot, 2, Fit::to_sell);
    b.returned(3, b.lot, 1, Fit::spoiled);
    Ledger ledger = replay(b.shop(), day(3));
    CHECK(state(b.shop(), ledger, b.lot).left == 12'000);
    CHECK(state(b.shop(), ledger, b.lot).cost.materials == Money::units(24));
    CHECK(materials(ledger, Boundary::sold) == Money::units(14));
    CHECK(materials(ledger, Boundary::lost) == Money::units(2));
    const Selling all = selling({b.shop(), ledger}, {day(0), day(3)});
    CHECK(all.bars == doctest::Approx(7));
    CHECK(all.takings == doctest::Approx(35));

    b.returned(4, b.lot, 9, Fit::to_sell);  // seven are with customers
    ledger = replay(b.shop(), day(4));
    CHECK(has(ledger, FindingCode::returned_more_than_sold));
    CHECK(state(b.shop(), ledger, b.lot).left == 19'000);
    CHECK(materials(ledger, Boundary::sold) == Money{});
}

TEST_CASE("a sitting is shared over its kinds equally and within a kind by size, to the last millionth") {
    ShopBuilder b;
    b.person(day(0), Money::units(12));
    const auto leaf = b.made("leaf", MaterialKind::harvest);
    const auto small = b.planting(day(0), square_metres(1), grams(9'000));
    const auto large = b.planting(day(0), square_metres(2), grams(9'000));
    const auto tend = [&](Key<Planting> planting) {
        auto& fact = b.add<Tending>();
        fact.date = day(5);
        fact.planting = planting;
        return fact.key;
    };
    const auto one = tend(small);
    const auto other = tend(large);
    const auto picked = b.harvest(day(5), large, leaf, grams(9'000));
    auto& sitting = b.add<Sitting>();
    sitting.date = day(5);
    sitting.time = minutes(100);
    const Key<Sitting> key = sitting.key;
    b.add<SittingAt>(key).tending = one;
    b.add<SittingAt>(key).harvest = b.all<Harvest>()[0].key;
    b.add<SittingAt>(key).tending = other;
    const Ledger ledger = replay(b.shop(), day(5));
    const auto spent = [&](std::uint32_t place) { return ledger.balances[ledger.accounts.plantings + place].hands_on; };
    CHECK(spent(0) == Minutes::millionths(16'666'666));
    CHECK(spent(1) == Minutes{});  // all of the bed's went along with the harvest
    CHECK(state(b.shop(), ledger, picked).cost.hands_on == Minutes::millionths(83'333'334));
    const auto lines = hours(b.shop(), ledger, {day(0), day(5)});
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].stage == Stage::garden);
    CHECK(lines[1].time == Minutes::whole(50));
}

TEST_CASE("time comes where the thing is by then: in the bars, or nowhere when they are gone") {
    ShopBuilder b;
    const auto bar = b.made("bar", MaterialKind::bar);
    b.person(day(0), Money::units(12));
    const auto batch = b.batch(day(1), b.recipe(10), bar);
    const auto lot = b.cut(day(2), batch, 10, 0, day(3));
    auto& sitting = b.add<Sitting>();
    sitting.date = day(4);
    sitting.time = minutes(30);
    const Key<Sitting> key = sitting.key;
    b.add<SittingAt>(key).batch = batch;
    CHECK(state(b.shop(), replay(b.shop(), day(4)), lot).cost.hands_on == Minutes::whole(30));
    b.sold(b.sale(day(3)), bar, 10, Money::units(5));
    const Ledger ledger = replay(b.shop(), day(4));
    CHECK(ledger.balance(Boundary::other).hands_on == Minutes::whole(30));
    CHECK(has(ledger, FindingCode::sat_at_when_gone));
    b.at(batch).date = day(5);
    const Ledger later = replay(b.shop(), day(5));
    CHECK(has(later, FindingCode::sitting_before_its_work));
    CHECK(later.balance(Boundary::office).hands_on == Minutes::whole(30));
}

TEST_CASE("time for nothing in particular, and work that belongs to no product, are the office's") {
    ShopBuilder b;
    b.person(day(0), Money::units(12));
    auto& sitting = b.add<Sitting>();
    sitting.date = day(1);
    sitting.time = minutes(10);
    auto& work = b.add<Work>();
    work.date = day(1);
    work.time = minutes(50);
    const Ledger ledger = replay(b.shop(), day(1));
    CHECK(ledger.balance(Boundary::office).labour == Money::units(12));
    CHECK(has(ledger, FindingCode::sitting_at_nothing));
    CHECK(cost_partition(b.shop(), ledger, day(1)).period.hands_on == Minutes::whole(60));
}

TEST_CASE("a general tool wears into overhead and the bars cut; one for the dye is spent; a broken one all at once") {
    ShopBuilder b;
    auto& overhead = b.add<Overhead>();
    overhead.from = day(0);
    overhead.normal_bars = 100;
    auto& tool = b.add<Equipment>();
    tool.bought = day(0);
    tool.price = Money::units(731);  // 2028 is a leap year
    tool.years = 2;
    const Key<Equipment> key = tool.key;
    CHECK(overhead_accrued(b.shop(), day(9)) == Money::units(10));
    CHECK(overhead_accrued(b.shop(), day(5'000)) == Money::units(731));
    const auto bar = b.made("bar", MaterialKind::bar);
    const auto lot = b.cut(day(2), b.batch(day(1), b.recipe(10), bar), 10, 0, day(30));
    Ledger ledger = replay(b.shop(), day(2));
    CHECK(state(b.shop(), ledger, lot).cost.overhead == Money::hundredths(3'655));
    b.at(key).gone = day(2);
    CHECK(overhead_accrued(b.shop(), day(2)) == Money::units(731));
    CHECK(state(b.shop(), replay(b.shop(), day(2)), lot).cost.overhead == Money{});

    b.at(key).gone.reset();
    b.at(key).dye_only = DyeOnly::vat;
    b.at(key).years = 0;
    b.at(key).price = Money::units(365);
    ledger = replay(b.shop(), day(2));
    CHECK(has(ledger, FindingCode::equipment_without_years));
    CHECK(state(b.shop(), ledger, lot).cost.overhead == Money{});
    CHECK(overhead_accrued(b.shop(), day(2)) == Money{});
    CHECK(dye_wear_accrued(b.shop(), day(2)) == Money::units(3));
    CHECK(cost_partition(b.shop(), ledger, day(2)).period.overhead == Money::units(3));
}

TEST_CASE("the tin should hold the float and what was sold, less what was let off and paid by card") {
    Bars b;
    auto& fair = b.add<Fair>();
    fair.date = day(1);
    fair.change_float = Money::units(30);
    fair.card_takings = Money::units(20);
    fair.reductions = Money::units(1);
    const Key<Fair> key = fair.key;
    auto& line = b.add<FairLine>(key);
    line.bar = b.bar;
    line.taken = 12;
    line.back = 2;
    line.price = Money::units(5);
    auto& bundle = b.add<FairBundle>(key);
    bundle.what = "three bars";
    bundle.bars = 3;
    bundle.price = Money::units(13);
    bundle.sold = 2;
    const auto in_tin = [&] {
        const Ledger ledger = replay(b.shop(), day(1));
        return tin({b.shop(), ledger}, b.at(key));
    };
    CHECK(in_tin().expected == Money::units(30 + 50 - 1 - 2 * 2 - 20));
    CHECK_FALSE(in_tin().difference);
    b.at(key).cash_in_tin = Money::units(53);
    CHECK(in_tin().difference == Money::units(-2));
    CHECK_FALSE(in_tin().price_missing);
}

TEST_CASE("a fair not counted took what was asked, less what was let off; postage paid counts for the fee") {
    Bars b;
    auto& fee = b.add<ChannelFee>();
    fee.from = day(0);
    fee.channel = Channel::online;
    fee.share = Ratio{10, 100};
    const auto sale = b.sale(day(1));
    b.at(sale).channel = Channel::online;
    b.at(sale).postage = Money::units(4);
    b.at(sale).postage_paid = Money::units(3);
    b.sold(sale, b.bar, 1, Money::units(7));
    auto& fair = b.add<Fair>();
    fair.date = day(2);
    fair.reductions = Money::units(2);
    const Key<Fair> key = fair.key;
    auto& line = b.add<FairLine>(key);
    line.bar = b.bar;
    line.taken = 2;
    line.price = Money::units(5);
    const Ledger ledger = replay(b.shop(), day(2));
    CHECK(ledger.balance(Boundary::selling).overhead == Money::units(5));  // 4 of postage, a tenth of 10
    const auto all = takings(b.shop(), ledger, {day(0), day(2)});
    REQUIRE(all.size() == 2);
    CHECK(all[0].gross == Money::units(10));
    CHECK(all[1].gross == Money::units(8));
    const Selling sold = selling({b.shop(), ledger}, {day(0), day(2)});
    CHECK(sold.takings == doctest::Approx(15));
    CHECK(*sold.cost_per_bar == doctest::Approx(1.0 / 3));
}
