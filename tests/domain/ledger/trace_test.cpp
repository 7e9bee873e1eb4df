#include "domain/ledger/trace.h"

#include <doctest/doctest.h>

#include "domain/ledger/where_used.h"
#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day march(unsigned day) {
    return day_of(2026, 3, day);
}

// Two cans of oil in one batch of ten bars, of which four are sold.
struct TwoCans : ShopBuilder {
    Key<Material> oil = material("oil", Purpose::oil);
    Key<Material> bar = made("bar", MaterialKind::bar);
    Key<Person> ann = person(march(1), Money::units(12));
    Key<Lot> first = delivery(march(1), oil, grams(600), Money::units(6));
    Key<Lot> second = delivery(march(2), oil, grams(1'000), Money::units(20));
    Key<Batch> loaf = batch(march(5), recipe(10), bar);
    Key<Lot> bars;

    TwoCans() {
        uses<BatchUse>(loaf, oil, grams(1'000));
        auto& time = add<BatchTime>(loaf);
        time.time = minutes(50);
        bars = cut(march(6), loaf, 10, 0, march(6));
        sold(sale(march(20)), bar, 4, Money::units(5));
    }
    std::uint32_t place(Key<Lot> lot) const {
        return static_cast<std::uint32_t>(shop().find(lot) - shop().all<Lot>().data());
    }
};

}  // namespace

TEST_CASE("what was sold comes from both cans and the hours, each by its share") {
    const TwoCans b;
    const Ledger ledger = replay(b.shop(), march(31));
    const auto leaves = trace(b.shop(), ledger, Term::sold, {march(1), march(31)});
    REQUIRE(leaves.size() == 3);
    // 600 g of the first at 6 and 400 g of the second at 8; four bars of ten.
    CHECK(leaves[0].fact == ref(b.shop().all<DeliveryLine>()[0]));
    CHECK(leaves[0].through == Boundary::delivered);
    CHECK(leaves[0].cost.materials == Money::hundredths(240));
    CHECK(leaves[1].fact == ref(b.shop().all<DeliveryLine>()[1]));
    CHECK(leaves[1].cost.materials == Money::hundredths(320));
    CHECK(leaves[2].fact == ref(b.shop().all<BatchTime>()[0]));
    CHECK(leaves[2].through == Boundary::hours);
    CHECK(leaves[2].cost.labour == Money::hundredths(400));
    CHECK(leaves[2].cost.hands_on == Minutes::whole(20));
    CHECK(sum(leaves) == ledger.balance(Boundary::sold));
}

TEST_CASE("a period knows nothing of what was sold before it") {
    TwoCans b;
    b.sold(b.sale(march(25)), b.bar, 1, Money::units(5));
    const Ledger ledger = replay(b.shop(), march(31));
    const auto leaves = trace(b.shop(), ledger, Term::sold, {march(21), march(31)});
    CHECK(sum(leaves).materials == Money::hundredths(140));
    CHECK(trace(b.shop(), ledger, Term::sold, {march(26), march(31)}).empty());
}

TEST_CASE("a batch that was cut still says what it was made of") {
    const TwoCans b;
    const Ledger ledger = replay(b.shop(), march(31));
    CHECK(trace(ledger, ledger.accounts.batches, march(31)).empty());
    CHECK(sum(trace_into(ledger, ledger.accounts.batches, march(31))).materials == Money::units(14));
}

TEST_CASE("general running costs in a bar are traced to the cut that took them up, and the accrual to its setting") {
    TwoCans b;
    auto& overhead = b.add<Overhead>();
    overhead.from = march(1);
    overhead.per_year = Money::units(365);
    overhead.normal_bars = 100;
    const Ledger ledger = replay(b.shop(), march(31));
    const auto leaves = trace(ledger, ledger.accounts.lots + b.place(b.bars), march(31));
    CHECK(leaves.back().fact == ref(b.shop().all<Cut>()[0]));
    CHECK(leaves.back().through == Boundary::overhead);
    CHECK(leaves.back().cost.overhead == Money::hundredths(2190));
    const auto in = trace(b.shop(), ledger, Term::in, {march(1), march(10)});
    CHECK(in.back().fact == ref(b.shop().all<Overhead>()[0]));
    CHECK(in.back().cost.overhead == Money::units(10));
}

TEST_CASE("forward from a can: the batch, its bars, what was sold; named only where all of it is") {
    TwoCans b;
    b.sold(b.sale(march(25)), b.bar, 1, Money::units(5), b.bars);
    const Ledger ledger = replay(b.shop(), march(31));
    const auto steps = where_used(ledger, b.place(b.second));
    REQUIRE(steps.size() == 4);
    CHECK(steps[0].to == ledger.accounts.batches);
    CHECK(steps[0].quantity == 400'000);
    CHECK(steps[1].to == ledger.accounts.lots + b.place(b.bars));
    CHECK(steps[1].quantity == 10'000);
    CHECK(steps[2].to == account(Boundary::sold));
    CHECK(steps[2].quantity == 4'000);
    for (const UseStep& step : steps) CHECK_FALSE(step.named);
    // From the bars themselves the second sale is known.
    const auto of_bars = where_used(ledger, b.place(b.bars));
    REQUIRE(of_bars.size() == 2);
    CHECK_FALSE(of_bars[0].named);
    CHECK(of_bars[1].named);
}

TEST_CASE("a can that came too late counts as used where it was missing") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    const auto bar = b.made("bar", MaterialKind::bar);
    const auto loaf = b.batch(march(5), b.recipe(10), bar);
    b.uses<BatchUse>(loaf, oil, grams(300));
    b.cut(march(6), loaf, 10, 0, march(6));
    b.delivery(march(9), oil, grams(1'000), Money::units(20));
    const Ledger ledger = replay(b.shop(), march(31));
    const auto& lots = b.shop().all<Lot>();
    const auto steps = where_used(ledger, static_cast<std::uint32_t>(lots.size() - 1));
    REQUIRE(steps.size() == 2);
    CHECK(steps[0].to == ledger.accounts.batches);
    CHECK(steps[0].quantity == 300'000);
    CHECK(ledger.movements[steps[0].movement].on() == march(5));
    CHECK(ledger.accounts.kind(steps[1].to) == AccountKind::lot);
}
