// The moving average: which materials, from when, and does it hold beside named lots, losses and shortfalls?
#include <doctest/doctest.h>

#include "domain/ledger/in_force.h"
#include "domain/ledger/stock_value.h"
#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day kYear = day_of(2026, 1, 1);
constexpr Day day(int n) {
    return kYear + Days{n};
}

struct Averaged : ShopBuilder {
    Key<Material> oil = material("oil", Purpose::oil);
    CostRule& rule(Day from, CostBy cost_by, std::optional<Key<Material>> of = {}) {
        auto& fact = add<CostRule>();
        fact.from = from;
        fact.material = of;
        fact.cost_by = cost_by;
        return fact;
    }
    Ledger books(Day on = day(40)) const { return replay(shop(), on); }
    Money cost(Key<Lot> lot, Day on = day(40)) const { return state(shop(), books(on), lot).cost.materials; }
    Money pool(const Ledger& ledger) const { return ledger.balances[ledger.accounts.pools].materials; }
};

}  // namespace

TEST_CASE("a named lot decides which goods leave, and the pool what they cost") {
    Averaged b;
    b.rule(kYear, CostBy::average);
    const auto cheap = b.delivery(day(1), b.oil, grams(10), Money::units(10));
    const auto dear = b.delivery(day(2), b.oil, grams(10), Money::units(30));
    b.loss(day(3), b.oil, grams(10), LossReason::given);
    CHECK(materials(b.books(), Boundary::given) == Money::units(20));
    b.loss(day(4), b.oil, grams(10), LossReason::given).lot = dear;
    const Ledger ledger = b.books();
    CHECK(materials(ledger, Boundary::given) == Money::units(40));
    CHECK(state(b.shop(), ledger, cheap).left == 0);
    CHECK(state(b.shop(), ledger, dear).left == 0);
    CHECK(b.pool(ledger).is_zero());
}

TEST_CASE("a lot shows its share of the pool by what is left of it, on the day and looked back at") {
    Averaged b;
    b.rule(kYear, CostBy::average);
    const auto cheap = b.delivery(day(1), b.oil, grams(10), Money::units(10));
    const auto dear = b.delivery(day(2), b.oil, grams(20), Money::units(80));
    b.loss(day(3), b.oil, grams(20), LossReason::given).lot = dear;
    CHECK(b.cost(cheap, day(2)) == Money::units(30));
    CHECK(b.cost(dear, day(2)) == Money::units(60));
    CHECK(b.cost(cheap) == Money::units(30));
    CHECK(state(b.shop(), b.books(), dear).cost_in.materials == Money::units(80));
    const StockValue then = stock_value(b.shop(), b.books(), day(2));
    REQUIRE(then.items.size() == 2);
    CHECK(then.items[0].cost.materials == Money::units(30));
    CHECK(then.items[1].cost.materials == Money::units(60));
    CHECK(then[StockKind::raw].materials == Money::units(90));
}

TEST_CASE("a change of rule moves the open lots' cost into the pool, or the pool's back to the lots") {
    Averaged b;
    const auto cheap = b.delivery(day(-20), b.oil, grams(20), Money::units(20));
    b.loss(day(-19), b.oil, grams(10), LossReason::given);
    const auto dear = b.delivery(day(-10), b.oil, grams(20), Money::units(80));
    b.rule(kYear, CostBy::average, b.oil);
    b.rule(day_of(2027, 1, 1), CostBy::lot, b.oil);

    CHECK(b.cost(cheap, day(-1)) == Money::units(10));
    CHECK(b.pool(b.books(day(-1))).is_zero());
    CHECK(b.pool(b.books(kYear)) == Money::units(90));
    CHECK(b.cost(cheap, kYear) == Money::units(30));
    const Ledger back = b.books(day_of(2027, 1, 1));
    CHECK(b.pool(back).is_zero());
    CHECK(back.balances[back.accounts.lots].materials == Money::units(30));
    CHECK(state(b.shop(), back, dear).cost.materials == Money::units(60));
    CHECK(state(b.shop(), back, dear).cost_in.materials == Money::units(80));
}

TEST_CASE("the rule changes only with a financial year; otherwise it waits, and that is said") {
    Averaged b;
    b.rule(day(5), CostBy::average);
    const Key<CostRule> key = b.all<CostRule>().front().key;
    CHECK(takes_effect(b.shop(), b.at(key)) == day_of(2027, 1, 1));
    CHECK(has(b.books(day(5)), FindingCode::cost_rule_waits));
    CHECK(b.books(day(4)).findings.empty());
    const auto& oil = b.all<Material>().front();
    CHECK(cost_rule_in_force(b.shop(), oil, day_of(2026, 12, 31)) == CostBy::lot);
    CHECK(cost_rule_in_force(b.shop(), oil, day_of(2027, 1, 1)) == CostBy::average);
    b.delivery(day(6), b.oil, grams(10), Money::units(10));
    CHECK(b.pool(b.books(day_of(2026, 12, 31))).is_zero());
    CHECK(b.pool(b.books(day_of(2027, 1, 1))) == Money::units(10));

    b.add<About>().year_begins = 4;
    CHECK(takes_effect(b.shop(), b.at(key)) == day_of(2026, 4, 1));
    b.at(key).from = day_of(2026, 4, 1);
    CHECK(b.books(day_of(2026, 4, 1)).findings.empty());
}

TEST_CASE("the latest word counts; of one day, that on the material itself") {
    Averaged b;
    const auto lye = b.material("lye", Purpose::lye);
    b.rule(kYear, CostBy::lot, b.oil);
    b.rule(kYear, CostBy::average);
    const auto in_force = [&](Key<Material> key, int year) {
        return cost_rule_in_force(b.shop(), b.at(key), day_of(year, 6, 1));
    };
    CHECK(in_force(b.oil, 2026) == CostBy::lot);
    CHECK(in_force(lye, 2026) == CostBy::average);
    b.rule(day_of(2027, 1, 1), CostBy::average);
    CHECK(in_force(b.oil, 2026) == CostBy::lot);
    CHECK(in_force(b.oil, 2027) == CostBy::average);
}

TEST_CASE("what has a strength, or is the shop's own make, is always costed by lot") {
    Averaged b;
    const auto red = b.material("red", Purpose::colourant);
    const auto match = b.material("bought blue", Purpose::other);
    b.add<Colour>().bought_match = match;
    const auto seed = b.made("seed", MaterialKind::seed);
    const auto powder = b.made("powder", MaterialKind::pigment);
    const auto can = [&](Key<Material> key) { return can_be_averaged(b.shop(), b.at(key)); };
    CHECK(can(b.oil));
    CHECK(can(seed));
    CHECK_FALSE(can(red));
    CHECK_FALSE(can(match));
    CHECK_FALSE(can(powder));
    b.rule(kYear, CostBy::average, red);
    CHECK(has(b.books(), FindingCode::no_average_for));
    const auto first = b.delivery(day(1), red, grams(10), Money::units(10));
    b.delivery(day(2), red, grams(10), Money::units(30));
    CHECK(b.cost(first) == Money::units(10));
}

TEST_CASE("usual losses stay in the pool, and only the excess is expensed") {
    Averaged b;
    b.rule(kYear, CostBy::average);
    auto& usual = b.add<NormalLoss>();
    usual.from = kYear;
    usual.rate = Ratio{10, 100};
    b.delivery(day(1), b.oil, grams(100), Money::units(10));
    b.delivery(day(1), b.oil, grams(100), Money::units(28));
    b.loss(day(2), b.oil, grams(10), LossReason::spilled);
    CHECK(b.pool(b.books()) == Money::units(38));
    b.loss(day(3), b.oil, grams(19), LossReason::spilled);
    CHECK(materials(b.books(), Boundary::lost) == Money::hundredths(380));  // 19 of the 190 g
    CHECK(b.pool(b.books()) == Money::hundredths(3'420));
}

TEST_CASE("a shortfall is settled at the average of what is there when the goods have come") {
    Averaged b;
    b.rule(kYear, CostBy::average);
    b.delivery(day(1), b.oil, grams(10), Money::units(10));
    b.loss(day(2), b.oil, grams(20), LossReason::given);
    b.delivery(day(3), b.oil, grams(20), Money::units(60));
    const Ledger ledger = b.books();
    CHECK(materials(ledger, Boundary::given) == Money::units(20));
    CHECK(materials(ledger, Boundary::provisional).is_zero());
    CHECK(materials(ledger, Boundary::shortfall) == Money::units(20));  // 30.00, not 10.00
    CHECK(b.pool(ledger) == Money::units(30));
}

TEST_CASE("a correction goes into the pool for what is left of its lot; a credit takes no more than is in it") {
    Averaged b;
    b.rule(kYear, CostBy::average);
    b.delivery(day(1), b.oil, grams(10), Money::units(10));
    const Key<Delivery> delivery = b.all<Delivery>().back().key;
    b.delivery(day(1), b.oil, grams(10), Money{});
    b.loss(day(2), b.oil, grams(5), LossReason::given).lot = b.all<Lot>().front().key;
    auto& fact = b.add<CostCorrection>();
    fact.date = day(3);
    fact.delivery = delivery;
    fact.amount = Money::units(4);
    CHECK(b.pool(b.books(day(2))) == Money::hundredths(750));
    CHECK(b.pool(b.books()) == Money::hundredths(950));
    CHECK(materials(b.books(), Boundary::corrections) == Money::units(2));
    fact.correction = Correction::less;
    fact.amount = Money::units(16);
    CHECK(b.pool(b.books()).is_zero());
    CHECK(materials(b.books(), Boundary::corrections) == Money::hundredths(-850));
    CHECK(has(b.books(), FindingCode::credit_more_than_cost));
}

TEST_CASE("a count works on the goods of a lot and the cost of the pool") {
    Averaged b;
    b.rule(kYear, CostBy::average);
    b.delivery(day(1), b.oil, grams(10), Money::units(10));
    const auto dear = b.delivery(day(2), b.oil, grams(10), Money::units(30));
    auto& count = b.add<Count>();
    count.date = day(3);
    auto& line = b.add<CountLine>(count.key);
    line.material = b.oil;
    line.lot = dear;
    line.counted = grams(5);
    CHECK(materials(b.books(), Boundary::lost) == Money::units(10));
    CHECK(b.pool(b.books()) == Money::units(30));
    line.counted = grams(15);
    CHECK(materials(b.books(), Boundary::lost) == Money::units(-10));
    CHECK(b.pool(b.books()) == Money::units(50));
    CHECK(b.books().findings.empty());
}
