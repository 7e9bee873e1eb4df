// A bed from sowing to its end: by-products, losses, several cuts, roots that take years.
#include <doctest/doctest.h>

#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day day(int n) {
    return day_of(2026, 3, 1) + Days{n};
}

// Four square metres, 10 kg expected, an hour at 12.00.
struct Plot : ShopBuilder {
    Key<Person> owner = person(day(0), Money::units(12));
    Key<Material> seed = made("seed", MaterialKind::seed);
    Key<Material> leaf = made("leaf", MaterialKind::harvest);
    Key<Planting> bed = planting(day(0), square_metres(4), grams(10'000));

    void tend(int on, int minutes_spent) {
        auto& fact = add<Tending>();
        fact.date = day(on);
        fact.planting = bed;
        fact.time = minutes(minutes_spent);
    }
    Key<Lot> keep_seed(int on, std::int64_t weight, int minutes_spent) {
        const auto kept = lot(seed);
        auto& fact = add<SeedKept>();
        fact.date = day(on);
        fact.planting = bed;
        fact.lot = kept;
        fact.amount = grams(weight);
        fact.time = minutes(minutes_spent);
        return kept;
    }
    void offer(int noted, int from, std::int64_t weight, Money price) {
        auto& fact = add<Offer>();
        fact.noted = day(noted);
        fact.from = day(from);
        fact.material = seed;
        fact.pack = grams(weight);
        fact.price = price;
    }
    void lose(int on, std::int64_t metres) {
        auto& fact = add<BedLost>();
        fact.date = day(on);
        fact.planting = bed;
        fact.area = square_metres(metres);
    }
    void expect(int on, std::int64_t weight) {
        auto& fact = add<ExpectedTotal>();
        fact.date = day(on);
        fact.planting = bed;
        fact.amount = grams(weight);
    }
    void end(Day on) {
        auto& fact = add<PlantingEnd>();
        fact.date = on;
        fact.planting = bed;
    }
    Ledger books(int on) const { return replay(shop(), day(on)); }
    const Cost& pool(const Ledger& ledger) const { return ledger.balances[ledger.accounts.plantings]; }
    const LotState& of(const Ledger& ledger, Key<Lot> lot) const { return state(shop(), ledger, lot); }
};

}  // namespace

TEST_CASE("seed kept takes what it would cost to buy off the crop, in every part, and its own time beside") {
    Plot plot;
    const auto feed = plot.material("feed", Purpose::feed);
    plot.delivery(day(0), feed, grams(1'000), Money::units(8));
    plot.uses<PlantingUse>(plot.bed, feed, grams(1'000));
    plot.tend(10, 60);  // 8.00 and 12.00 in the bed
    plot.offer(1, 1, 10, Money::units(1));
    plot.offer(20, 20, 10, Money::units(2));
    const auto kept = plot.keep_seed(30, 20, 5);  // worth 4.00 of 20.00
    const Ledger ledger = plot.books(30);
    CHECK(plot.of(ledger, kept).cost.materials == Money::hundredths(160));
    CHECK(plot.of(ledger, kept).cost.labour == Money::hundredths(240 + 100));
    CHECK(plot.of(ledger, kept).cost.hands_on == Minutes::whole(12 + 5));
    CHECK(plot.of(ledger, kept).left == 20'000);
    CHECK(plot.pool(ledger).materials == Money::hundredths(640));
    CHECK(plot.pool(ledger).hands_on == Minutes::whole(48));
    // It is no part of the crop: the first half of the leaf takes half of what is left.
    const auto cut = plot.harvest(day(40), plot.bed, plot.leaf, grams(5'000));
    CHECK(plot.of(plot.books(40), cut).cost.materials == Money::hundredths(320));
}

TEST_CASE("seed worth more than the bed cost takes all of it and no more") {
    Plot plot;
    plot.tend(10, 60);
    plot.offer(1, 1, 1, Money::units(100));
    const auto kept = plot.keep_seed(30, 20, 0);
    const Ledger ledger = plot.books(30);
    CHECK(plot.of(ledger, kept).cost.labour == Money::units(12));
    CHECK(plot.pool(ledger).is_zero());
}

TEST_CASE("seed: an offer to come does not count, the last price paid stands in, and without one it is free") {
    Plot plot;
    plot.tend(10, 60);
    plot.offer(1, 31, 10, Money::units(9));
    plot.offer(31, 1, 10, Money::units(9));
    const auto kept = plot.keep_seed(30, 10, 0);
    Ledger ledger = plot.books(30);
    CHECK(has(ledger, FindingCode::by_product_worth_unknown));
    CHECK(plot.of(ledger, kept).cost.is_zero());
    plot.delivery(day(2), plot.seed, grams(10), Money::units(5));
    plot.delivery(day(5), plot.seed, grams(10), Money::units(3), Money::units(1));
    ledger = plot.books(30);
    CHECK(!has(ledger, FindingCode::by_product_worth_unknown));
    CHECK(plot.of(ledger, kept).cost.labour == Money::units(3));
}

TEST_CASE("seed kept before sowing or after the end is said; a bed that cost nothing has nothing to hand on") {
    Plot plot;
    plot.at(plot.bed).sown = day(5);
    plot.offer(1, 1, 10, Money::units(1));
    const auto kept = plot.keep_seed(4, 10, 0);
    CHECK(has(plot.books(4), FindingCode::harvest_before_sowing));
    CHECK(plot.of(plot.books(4), kept).cost.is_zero());
    plot.end(day(6));
    plot.keep_seed(7, 10, 0);
    CHECK(has(plot.books(7), FindingCode::harvest_after_end));
    // Nothing was weighed in: the time is the bed's.
    Plot other;
    other.keep_seed(5, 0, 10);
    CHECK(other.pool(other.books(5)).hands_on == Minutes::whole(10));
}

TEST_CASE("seed kept can be sown that same day, and is there before it is") {
    Plot plot;
    const auto kept = plot.keep_seed(30, 10, 0);
    const auto next = plot.planting(day(30), square_metres(1), std::nullopt);
    plot.uses<PlantingUse>(next, plot.seed, grams(10), kept);
    const Ledger ledger = plot.books(30);
    CHECK(!has(ledger, FindingCode::more_used_than_there));
    CHECK(plot.of(ledger, kept).left == 0);
}

TEST_CASE("part of a bed lost takes its part of what went in; a bill and a guess then go by what still stands") {
    Plot plot;
    plot.at(plot.bed).expected.reset();
    plot.at(plot.at(plot.bed).plant).usual = grams(1'000);  // a square metre
    plot.tend(10, 60);
    plot.lose(20, 1);
    Ledger ledger = plot.books(20);
    CHECK(ledger.balance(Boundary::lost).labour == Money::units(3));
    CHECK(plot.pool(ledger).labour == Money::units(9));
    // Three metres stand: 3 kg are looked for, and 1 kg takes a third.
    const auto cut = plot.harvest(day(30), plot.bed, plot.leaf, grams(1'000));
    CHECK(plot.of(plot.books(30), cut).cost.labour == Money::units(3));
    plot.planting(day(1), square_metres(1), grams(1'000));
    auto& bill = plot.add<PaidOut>();
    bill.date = day(40);
    bill.amount = Money::units(8);
    bill.dye_only = DyeOnly::garden;
    ledger = plot.books(40);
    CHECK(plot.pool(ledger).overhead == Money::units(6));
    CHECK(ledger.balances[ledger.accounts.plantings + 1].overhead == Money::units(2));
}

TEST_CASE("a second loss goes by the area left; more than stood is all, and is said; a closed bed has none to lose") {
    Plot plot;
    plot.tend(10, 60);
    plot.lose(20, 2);
    plot.lose(21, 1);
    Ledger ledger = plot.books(21);
    CHECK(ledger.balance(Boundary::lost).labour == Money::units(9));
    CHECK(!has(ledger, FindingCode::more_lost_than_stood));
    plot.lose(22, 3);
    ledger = plot.books(22);
    CHECK(ledger.balance(Boundary::lost).labour == Money::units(12));
    CHECK(has(ledger, FindingCode::more_lost_than_stood));
    plot.end(day(23));
    plot.lose(24, 1);
    CHECK(has(plot.books(24), FindingCode::bed_lost_after_end));
}

TEST_CASE("what was cut in the morning is safe from the night's loss") {
    Plot plot;
    plot.tend(10, 60);
    plot.lose(20, 4);
    const auto cut = plot.harvest(day(20), plot.bed, plot.leaf, grams(5'000));
    const Ledger ledger = plot.books(20);
    CHECK(plot.of(ledger, cut).cost.labour == Money::units(6));
    CHECK(ledger.balance(Boundary::lost).labour == Money::units(6));
}

TEST_CASE("sown again: more seed and time go to the same bed, and the crop carries both sowings") {
    Plot plot;
    plot.delivery(day(0), plot.seed, grams(20), Money::units(4));
    plot.uses<PlantingUse>(plot.bed, plot.seed, grams(10));
    auto& again = plot.add<Tending>();
    again.date = day(15);
    again.planting = plot.bed;
    again.time = minutes(30);
    plot.uses<TendingUse>(again.key, plot.seed, grams(10));
    const auto cut = plot.harvest(day(90), plot.bed, plot.leaf, grams(10'000));
    const Ledger ledger = plot.books(90);
    CHECK(plot.of(ledger, cut).cost.materials == Money::units(4));
    CHECK(plot.of(ledger, cut).cost.labour == Money::units(6));
    CHECK(plot.pool(ledger).is_zero());
}

TEST_CASE("a crop that fails entirely is lost with its seed and its hours") {
    Plot plot;
    plot.delivery(day(0), plot.seed, grams(10), Money::units(2));
    plot.uses<PlantingUse>(plot.bed, plot.seed, grams(10));
    plot.tend(10, 60);
    plot.end(day(60));
    const Ledger ledger = plot.books(60);
    CHECK(ledger.balance(Boundary::lost).materials == Money::units(2));
    CHECK(ledger.balance(Boundary::lost).labour == Money::units(12));
    CHECK(ledger.balance(Boundary::garden).is_zero());
    CHECK(plot.pool(ledger).is_zero());
}

TEST_CASE("a biennial stands over its first winter and is closed at the end of its second year") {
    Plot plot;
    Plant& plant = plot.at(plot.at(plot.bed).plant);
    plant.years_to_first = 1;
    plot.tend(10, 60);
    CHECK(plot.pool(replay(plot.shop(), day_of(2027, 12, 30))).labour == Money::units(12));
    const auto cut = plot.harvest(day_of(2027, 7, 1), plot.bed, plot.leaf, grams(9'000));
    const Ledger ledger = replay(plot.shop(), day_of(2027, 12, 31));
    CHECK(has(ledger, FindingCode::planting_end_assumed));
    CHECK(plot.of(ledger, cut).cost.labour == Money::hundredths(1'080));
    CHECK(ledger.balance(Boundary::garden).labour == Money::hundredths(120));
}

TEST_CASE("a root lifted in its third year carries all three years") {
    Plot plot;
    plot.at(plot.at(plot.bed).plant).years_to_first = 2;
    for (const int on : {10, 400, 800}) plot.tend(on, 60);
    const auto lifted = plot.harvest(day_of(2028, 10, 1), plot.bed, plot.leaf, grams(11'000));
    const Ledger ledger = replay(plot.shop(), day_of(2028, 12, 30));
    CHECK(!has(ledger, FindingCode::planting_end_assumed));
    CHECK(plot.of(ledger, lifted).cost.hands_on == Minutes::whole(180));
    CHECK(plot.pool(ledger).is_zero());
}

TEST_CASE("several cuts: each goes by the total expected on its day, and a revision changes no earlier cut") {
    Plot plot;
    plot.tend(10, 100);                                                           // 20.00
    const auto first = plot.harvest(day(60), plot.bed, plot.leaf, grams(2'000));  // 2 of 10 kg
    plot.expect(70, 6'000);
    const auto second = plot.harvest(day(90), plot.bed, plot.leaf, grams(2'000));  // 2 of the 4 to come
    plot.expect(95, 3'000);                                                        // less than was cut
    const auto third = plot.harvest(day(120), plot.bed, plot.leaf, grams(500));    // all that is left
    const Ledger ledger = plot.books(120);
    CHECK(plot.of(ledger, first).cost.labour == Money::units(4));
    CHECK(plot.of(ledger, second).cost.labour == Money::units(8));
    CHECK(plot.of(ledger, third).cost.labour == Money::units(8));
    CHECK(plot.pool(ledger).is_zero());
}

TEST_CASE("seed at the moving average: what was kept and its time go into the average of all seed") {
    Plot plot;
    auto& rule = plot.add<CostRule>();
    rule.from = day_of(2026, 1, 1);
    rule.cost_by = CostBy::average;
    plot.delivery(day(0), plot.seed, grams(10), Money::units(2));
    plot.tend(10, 60);
    const auto kept = plot.keep_seed(30, 10, 10);  // worth 2.00 of 12.00, and 2.00 of time
    const auto next = plot.planting(day(31), square_metres(1), std::nullopt);
    plot.uses<PlantingUse>(next, plot.seed, grams(10), kept);
    const Ledger ledger = plot.books(31);
    const Cost& sown = ledger.balances[ledger.accounts.plantings + 1];
    CHECK(sown.materials == Money::units(1));
    CHECK(sown.labour == Money::units(2));
    CHECK(plot.of(ledger, kept).cost.is_zero());
    CHECK(plot.of(ledger, kept).cost_in.labour == Money::units(4));
}
