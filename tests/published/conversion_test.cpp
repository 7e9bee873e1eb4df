// What a job and a harvest cost, against textbook examples of job order costing and units of production.
#include <doctest/doctest.h>

#include <array>

#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

struct Job : ShopBuilder {
    Day day = day_of(2026, 2, 2);
    Key<Person> maker = person(day_of(2026, 1, 1), Money::units(60));  // a unit of currency a minute
    Key<Material> vinyl = material("vinyl", Purpose::other);
    Key<Material> bar = made("bar", MaterialKind::bar);
    Key<Batch> job = batch(day, recipe(66), bar);

    void takes(Money materials, std::int64_t minutes_of_work) {
        delivery(day, vinyl, grams(1'000), materials);
        uses<BatchUse>(job, vinyl, grams(1'000));
        auto& time = add<BatchTime>(job);
        time.time = minutes(minutes_of_work);
        time.who = maker;
    }
    void overhead(Money per_year, int normal_bars) {
        auto& fact = add<Overhead>();
        fact.from = day_of(2026, 1, 1);
        fact.per_year = per_year;
        fact.normal_bars = normal_bars;
    }
    void normal_loss(Ratio rate) {
        auto& fact = add<NormalLoss>();
        fact.from = day_of(2026, 1, 1);
        fact.of = LossOf::batch;
        fact.rate = rate;
    }
    CostPartition terms() const { return cost_partition(shop(), replay(shop(), day), day); }
    Cost of(Key<Lot> lot) const {
        const Ledger ledger = replay(shop(), day);
        return ledger.lots[static_cast<std::size_t>(shop().find(lot) - shop().all<Lot>().data())].cost;
    }
};

}  // namespace

// Source: OpenStax, Principles of Accounting, Volume 2: Managerial Accounting, sections 4.2 to 4.4, Dinosaur
// Vinyl, job MAC001: materials 700, labour 66, overhead at 250,000 to 100,000 of labour, 2.50, so 165; 931 in all.
// Here overhead goes by good bars: 66 bars that took a unit of labour each, of 100,000 such bars a year.
TEST_CASE("job MAC001 costs 700 and 66 and 165, 931 in all") {
    Job b;
    b.takes(Money::units(700), 66);
    b.overhead(Money::units(250'000), 100'000);
    const auto lot = b.cut(b.day, b.job, 66, 0, b.day);
    const Cost cost = b.of(lot);
    CHECK(cost.materials == Money::units(700));
    CHECK(cost.labour == Money::units(66));
    CHECK(cost.overhead == Money::units(165));
    CHECK(cost.full() == Money::units(931));
    CHECK(cost.hands_on == Minutes::whole(66));
}

// Source: the same sections: overhead of 256,500 against 250,000 applied is 6,500 under-applied. Here: 250,000
// accrued in the year, 66 bars made of 100,000, and all that no bar took stays with the period.
TEST_CASE("overhead that no bar took stays with the period") {
    Job b;
    b.takes(Money::units(700), 66);
    b.overhead(Money::units(250'000), 100'000);
    b.cut(b.day, b.job, 66, 0, b.day);
    const Day end = day_of(2026, 12, 31);
    const auto terms = cost_partition(b.shop(), replay(b.shop(), end), end);
    CHECK(terms.stock.overhead == Money::units(165));
    CHECK(terms.period.overhead == Money::units(250'000 - 165));
    CHECK(terms.in.overhead == Money::units(250'000));
}

// Rule: IAS 2, paragraph 16(a): abnormal amounts of waste are expensed. The figures are arithmetic.
TEST_CASE("spoilage up to the usual stays in the good bars, the rest is lost at the unit cost") {
    Job b;
    b.takes(Money::units(950), 95);
    b.normal_loss({5, 100});
    const auto lot = b.cut(b.day, b.job, 100, 12, b.day);
    // 100 cut, 5 of them usual: 10 and a minute each for 95. Seven too many are 70 lost, 88 good bars hold 880.
    CHECK(b.of(lot).materials == Money::units(880));
    CHECK(b.of(lot).hands_on == Minutes::whole(88));
    CHECK(b.terms().lost.materials == Money::units(70));
    CHECK(b.terms().lost.labour == Money::units(7));

    Job usual;
    usual.takes(Money::units(950), 95);
    usual.normal_loss({5, 100});
    const auto good = usual.cut(usual.day, usual.job, 100, 4, usual.day);
    CHECK(usual.of(good).materials == Money::units(950));
    CHECK(usual.terms().lost.is_zero());
}

namespace {

struct DyeBed : ShopBuilder {
    Day sown = day_of(2021, 3, 1);
    Key<Material> seed = made("seed", MaterialKind::seed);
    Key<Material> root = made("root", MaterialKind::harvest);
    Key<Planting> bed{};

    DyeBed(Money cost, std::int64_t expected_kilograms) {
        delivery(sown, seed, grams(1), cost);
        bed = planting(sown, square_metres(10), grams(expected_kilograms * 1'000));
        shop_plant().crops = 5;
        uses<PlantingUse>(bed, seed, grams(1));
    }
    Plant& shop_plant() { return at(at(bed).plant); }
    Key<Lot> lifted(int year, std::int64_t kilograms) {
        return harvest(day_of(year, 9, 1), bed, root, grams(kilograms * 1'000));
    }
    Money cost(Key<Lot> lot, Day day) const {
        const Ledger ledger = replay(shop(), day);
        return ledger.lots[static_cast<std::size_t>(shop().find(lot) - shop().all<Lot>().data())].cost.materials;
    }
};

}  // namespace

// Source: OpenStax, Principles of Accounting, Volume 1: Financial Accounting, section 11.3, Kenzie: 48,000 over 960,000
// pages is 0.05; 180, 200, 210, 190 and 180 thousand pages take 9,000, 10,000, 10,500, 9,500 and 9,000.
TEST_CASE("a bed's cost goes to its harvests as units of production") {
    DyeBed b{Money::units(48'000), 960};
    std::array<Key<Lot>, 5> lots{};
    constexpr std::array<int, 5> kThousands{180, 200, 210, 190, 180};
    constexpr std::array<int, 5> kCosts{9'000, 10'000, 10'500, 9'500, 9'000};
    for (std::size_t i = 0; i < lots.size(); ++i) lots[i] = b.lifted(2021 + static_cast<int>(i), kThousands[i]);
    const Day end = day_of(2025, 9, 30);
    for (std::size_t i = 0; i < lots.size(); ++i) CHECK(b.cost(lots[i], end) == Money::units(kCosts[i]));
    const auto terms = cost_partition(b.shop(), replay(b.shop(), end), end);
    CHECK(terms.in_progress.is_zero());
    CHECK(terms.stock.materials == Money::units(48'000));
}

TEST_CASE("the book value after each year is 48,000 less what was taken") {
    DyeBed b{Money::units(48'000), 960};
    b.lifted(2021, 180);
    b.lifted(2022, 200);
    const auto standing = [&](int year) {
        const Day end = day_of(year, 12, 31);
        return cost_partition(b.shop(), replay(b.shop(), end), end).in_progress.materials;
    };
    CHECK(standing(2021) == Money::units(39'000));
    CHECK(standing(2022) == Money::units(29'000));
}

// Source: the same section, depletion: 1,000,000 for 10,000 gallons is 100; 4,000 taken out are 400,000.
TEST_CASE("four of ten parts lifted take four of ten parts of the cost") {
    DyeBed b{Money::units(1'000'000), 10'000};
    const auto lot = b.lifted(2021, 4'000);
    const Day end = day_of(2021, 12, 31);
    CHECK(b.cost(lot, end) == Money::units(400'000));
    CHECK(cost_partition(b.shop(), replay(b.shop(), end), end).in_progress.materials == Money::units(600'000));
}

// Arithmetic, no published example of a dye bed being known: 1,200 for 20 kg is 60 a kilogram; a revised
// expectation changes only what is still to come.
TEST_CASE("a revised expectation moves no cost of an earlier harvest") {
    DyeBed b{Money::units(1'200), 20};
    const auto early = b.lifted(2021, 12);
    auto& revised = b.add<ExpectedTotal>();
    revised.date = day_of(2022, 1, 1);
    revised.planting = b.bed;
    revised.amount = grams(16'000);
    const auto late = b.lifted(2022, 2);
    const Day end = day_of(2022, 12, 31);
    CHECK(b.cost(early, end) == Money::units(720));
    CHECK(b.cost(late, end) == Money::units(240));  // half of the 480 that were left
}
