// From the garden to the bar and to the stall: what each fact carries on, and what it leaves behind.
#include <doctest/doctest.h>

#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {
constexpr Day kSpring = day_of(2026, 3, 1);
constexpr Day day(int n) {
    return kSpring + Days{n};
}

struct Garden {
    ShopBuilder b;
    Key<Person> owner = b.person(kSpring, Money::units(12));
    Key<Material> leaf = b.made("leaf", MaterialKind::harvest);
    Key<Material> powder = b.made("powder", MaterialKind::pigment);
    Key<Planting> bed = b.planting(day(0), square_metres(2), grams(10'000));

    void tend(int on, int minutes_spent) {
        auto& tending = b.add<Tending>();
        tending.date = day(on);
        tending.planting = bed;
        tending.time = minutes(minutes_spent);
        tending.who = owner;
    }
    Key<Vat> vat(int on, Amount leaves, int hands_on) {
        auto& fact = b.add<Vat>();
        fact.date = day(on);
        const Key<Vat> key = fact.key;
        b.uses<VatUse>(key, leaf, leaves);
        auto& step = b.add<VatStep>(key);
        step.what = "all of it";
        step.hands_on = minutes(hands_on);
        return key;
    }
    Key<Lot> dry(int on, std::initializer_list<Key<Vat>> vats, std::optional<Amount> came) {
        const auto lot = b.lot(powder);
        auto& fact = b.add<Drying>();
        fact.date = day(on);
        if (came) fact.lot = lot;
        fact.amount = came;
        const Key<Drying> key = fact.key;
        for (const auto each : vats) b.add<DryingVat>(key).vat = each;
        return lot;
    }
};
}  // namespace

TEST_CASE("a harvest takes its share of what the bed gathered; the rest waits for the next") {
    Garden g;
    g.tend(10, 60);
    const auto first = g.b.harvest(day(100), g.bed, g.leaf, grams(4'000));
    g.tend(110, 60);
    const auto second = g.b.harvest(day(150), g.bed, g.leaf, grams(6'000));
    const Ledger ledger = replay(g.b.shop(), day(200));
    CHECK(state(g.b.shop(), ledger, first).cost.labour == Money::hundredths(480));  // 4 of 10 kg of 12.00
    CHECK(state(g.b.shop(), ledger, second).cost.labour == Money::hundredths(1'920));
    CHECK(state(g.b.shop(), ledger, second).cost.hands_on == Minutes::whole(96));
}

TEST_CASE("a crop that failed is lost; what a closed bed had left is the period's") {
    Garden g;
    g.tend(10, 60);
    auto& end = g.b.add<PlantingEnd>();
    end.date = day(90);
    end.planting = g.bed;
    CHECK(replay(g.b.shop(), day(90)).balance(Boundary::lost).labour == Money::units(12));

    Garden other;
    other.tend(10, 60);
    other.b.harvest(day(50), other.bed, other.leaf, grams(5'000));
    auto& closed = other.b.add<PlantingEnd>();
    closed.date = day(90);
    closed.planting = other.bed;
    const Ledger ledger = replay(other.b.shop(), day(90));
    CHECK(ledger.balance(Boundary::garden).labour == Money::units(6));
    CHECK(ledger.balance(Boundary::lost).labour == Money{});
}

TEST_CASE("a bed nobody closed is closed at the end of its last year, and that is said") {
    Garden g;
    g.tend(10, 60);
    CHECK(!has(replay(g.b.shop(), day_of(2026, 12, 30)), FindingCode::planting_end_assumed));
    const Ledger ledger = replay(g.b.shop(), day_of(2026, 12, 31));
    CHECK(has(ledger, FindingCode::planting_end_assumed));
    CHECK(ledger.balance(Boundary::lost).labour == Money::units(12));
    g.b.harvest(day_of(2027, 2, 1), g.bed, g.leaf, grams(100));
    CHECK(has(replay(g.b.shop(), day_of(2027, 2, 1)), FindingCode::harvest_after_end));
}

TEST_CASE("powder carries all of its vats; a vat that gave nothing is lost; a vat not dry is in progress") {
    Garden g;
    g.tend(10, 100);
    g.b.harvest(day(100), g.bed, g.leaf, grams(10'000));
    const auto one = g.vat(101, grams(4'000), 30);
    const auto two = g.vat(102, grams(4'000), 20);
    const auto three = g.vat(103, grams(2'000), 10);
    CHECK(cost_partition(g.b.shop(), replay(g.b.shop(), day(103)), day(103)).in_progress.hands_on ==
          Minutes::whole(160));
    const auto lot = g.dry(110, {one, two}, grams(8));
    g.dry(111, {three}, std::nullopt);
    const Ledger ledger = replay(g.b.shop(), day(111));
    CHECK(state(g.b.shop(), ledger, lot).cost.hands_on == Minutes::whole(130));
    CHECK(state(g.b.shop(), ledger, lot).left == 8'000);
    CHECK(ledger.balance(Boundary::lost).hands_on == Minutes::whole(30));

    g.dry(112, {one}, grams(1));
    CHECK(has(replay(g.b.shop(), day(112)), FindingCode::vat_dried_twice));
}

TEST_CASE("attended waiting counts only by the share the maker set") {
    Garden g;
    const auto vat = g.vat(1, grams(1), 10);
    auto& step = g.b.add<VatStep>(vat);
    step.what = "watch the pot";
    step.waiting = minutes(100);
    step.watch = Watch::attended;
    CHECK(-replay(g.b.shop(), day(1)).balance(Boundary::hours).hands_on == Minutes::whole(10));
    auto& share = g.b.add<WaitingShare>();
    share.from = day(0);
    share.share = Ratio{25, 100};
    CHECK(-replay(g.b.shop(), day(1)).balance(Boundary::hours).hands_on == Minutes::whole(35));
}

TEST_CASE("a good bar carries the usual rejects; the rest of them are lost; running costs go by good bars") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    const auto bar = b.made("bar", MaterialKind::bar);
    b.delivery(day(0), oil, grams(1'000), Money::hundredths(9'500));
    auto& usual = b.add<NormalLoss>();
    usual.from = day(0);
    usual.of = LossOf::batch;
    usual.rate = Ratio{5, 100};
    auto& overhead = b.add<Overhead>();
    overhead.from = day(0);
    overhead.per_year = Money::units(365);
    overhead.normal_bars = 730;
    const auto batch = b.batch(day(1), b.recipe(20), bar);
    b.uses<BatchUse>(batch, oil, grams(1'000));
    const auto lot = b.cut(day(2), batch, 20, 4, day(30));
    const Ledger ledger = replay(b.shop(), day(2));
    // 95.00 over 19 bars (one reject is usual): 5.00 each; three bars lost, sixteen good.
    CHECK(materials(ledger, Boundary::lost) == Money::units(15));
    CHECK(state(b.shop(), ledger, lot).cost.materials == Money::units(80));
    CHECK(state(b.shop(), ledger, lot).cost.overhead == Money::units(8));
    // Three days' running costs have accrued, sixteen bars' worth are absorbed.
    const CostPartition terms = cost_partition(b.shop(), ledger, day(2));
    CHECK(terms.period.overhead == Money::units(3) - Money::units(8));
    CHECK(terms.in == terms.out());
}

TEST_CASE("nothing good, more rejected than cut, cut twice, cut before pouring: said, and all of it lost") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    const auto bar = b.made("bar", MaterialKind::bar);
    b.delivery(day(0), oil, grams(1'000), Money::units(10));
    const auto batch = b.batch(day(5), b.recipe(20), bar);
    b.uses<BatchUse>(batch, oil, grams(1'000));
    b.cut(day(4), batch, 5, 0, day(30));
    b.cut(day(6), batch, 10, 11, day(30));
    const Ledger ledger = replay(b.shop(), day(6));
    CHECK(has(ledger, FindingCode::cut_before_pouring));
    CHECK(has(ledger, FindingCode::batch_cut_twice));
    CHECK(has(ledger, FindingCode::rejected_more_than_cut));
    CHECK(has(ledger, FindingCode::no_good_bars));
    CHECK(materials(ledger, Boundary::lost) == Money::units(10));
}

TEST_CASE("a fair sells what did not come back; its fee, travel and payment fees are the period's") {
    ShopBuilder b;
    const auto bar = b.made("bar", MaterialKind::bar);
    b.already_here(day(0), bar, pieces(30), Money::units(60));
    auto& price = b.add<Price>();
    price.from = day(0);
    price.bar = bar;
    price.shelf = Money::hundredths(550);
    auto& card = b.add<ChannelFee>();
    card.from = day(0);
    card.channel = Channel::card;
    card.share = Ratio{2, 100};
    card.per_payment = Money::hundredths(10);
    card.per_bar = Money::hundredths(5);
    auto& fair = b.add<Fair>();
    fair.date = day(9);
    fair.fee = Money::units(25);
    fair.travel = Money::units(10);
    fair.card_takings = Money::units(50);
    fair.card_payments = 7;
    const Key<Fair> key = fair.key;
    auto& line = b.add<FairLine>(key);
    line.bar = bar;
    line.taken = 24;
    line.back = 10;
    const Ledger ledger = replay(b.shop(), day(9));
    CHECK(materials(ledger, Boundary::sold) == Money::units(28));
    REQUIRE(ledger.sold.size() == 1);
    CHECK(ledger.sold[0].bars == 14'000);
    CHECK(ledger.sold[0].price == Money::hundredths(550));
    // 25 + 10 + 2 % of 50 + 7 payments + 14 bags
    CHECK(ledger.balance(Boundary::selling).overhead == Money::hundredths(3'500 + 100 + 70 + 70));
}

TEST_CASE("bars sold before they are cured, more back than taken, no price: said") {
    ShopBuilder b;
    const auto bar = b.made("bar", MaterialKind::bar);
    const auto batch = b.batch(day(0), b.recipe(10), bar);
    b.cut(day(1), batch, 10, 0, day(40));
    b.sold(b.sale(day(5)), bar, 3, Money::units(4));
    auto& fair = b.add<Fair>();
    fair.date = day(41);
    const Key<Fair> key = fair.key;
    auto& line = b.add<FairLine>(key);
    line.bar = bar;
    line.taken = 2;
    line.back = 5;
    auto& other = b.add<FairLine>(key);
    other.bar = bar;
    other.taken = 2;
    const Ledger ledger = replay(b.shop(), day(41));
    CHECK(has(ledger, FindingCode::sold_before_cured));
    CHECK(has(ledger, FindingCode::back_more_than_taken));
    CHECK(has(ledger, FindingCode::no_price));
    CHECK(ledger.sold.size() == 2);
}

TEST_CASE("a wage is a material cost and no own minutes; time with no pay on record still counts as time") {
    Garden g;
    auto& helper = g.b.add<Person>();
    helper.name = "helper";
    const Key<Person> hired = helper.key;
    auto& pay = g.b.add<Pay>();
    pay.from = day(0);
    pay.person = hired;
    pay.standing = Standing::paid;
    pay.per_hour = Money::units(10);
    auto& tending = g.b.add<Tending>();
    tending.date = day(1);
    tending.planting = g.bed;
    tending.time = minutes(30);
    tending.who = hired;
    auto& stranger = g.b.add<Person>();
    stranger.name = "stranger";
    const Key<Person> unpaid = stranger.key;
    auto& more = g.b.add<Tending>();
    more.date = day(2);
    more.planting = g.bed;
    more.time = minutes(20);
    more.who = unpaid;
    const Ledger ledger = replay(g.b.shop(), day(2));
    const Cost& pool = ledger.balances[ledger.accounts.plantings];
    CHECK(pool.materials == Money::units(5));
    CHECK(pool.hands_on == Minutes::whole(20));
    CHECK(pool.labour == Money{});
    CHECK(has(ledger, FindingCode::pay_unknown));
}

TEST_CASE("a bill for the dye goes to the vats in hand as far as it was avoidable, the rest is sunk") {
    Garden g;
    g.vat(1, grams(0), 10);
    g.vat(1, grams(0), 20);
    auto& bill = g.b.add<PaidOut>();
    bill.date = day(2);
    bill.what = "assessor";
    bill.amount = Money::units(100);
    bill.dye_only = DyeOnly::vat;
    bill.avoidable = Ratio{60, 100};
    const Ledger ledger = replay(g.b.shop(), day(2));
    CHECK(ledger.balances[ledger.accounts.vats].overhead == Money::units(30));
    CHECK(ledger.balances[ledger.accounts.vats + 1].overhead == Money::units(30));
    CHECK(ledger.balance(Boundary::dye_sunk).overhead == Money::units(40));

    g.b.all<PaidOut>().back().date = day(0);
    const Ledger early = replay(g.b.shop(), day(2));
    CHECK(early.balance(Boundary::dye_avoidable).overhead == Money::units(60));
    CHECK(has(early, FindingCode::dye_bill_without_work));
}

TEST_CASE("running costs accrue by days of the year, whole at the year's end, over a change of amount") {
    ShopBuilder b;
    auto& first = b.add<Overhead>();
    first.from = day_of(2024, 1, 1);
    first.per_year = Money::units(366);
    auto& second = b.add<Overhead>();
    second.from = day_of(2025, 1, 1);
    second.per_year = Money::units(730);
    const Day last = day_of(2024, 12, 31);
    const auto accrued = [&](Day on) { return cost_partition(b.shop(), replay(b.shop(), on), on).in.overhead; };
    CHECK(accrued(day_of(2024, 1, 1)) == Money::units(1));
    CHECK(accrued(last) == Money::units(366));
    CHECK(accrued(last + Days{2}) == Money::units(370));
}
