// The moving average against textbook inventories. Goods leave as bought materials do, given away.
#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

struct Step {
    int day;
    int bought;  // below nought: gone
    Money price;
};

struct Inventory : ShopBuilder {
    Key<Material> unit = material("unit", Purpose::other, HeldAs::count);

    // July is the first month of the financial year.
    explicit Inventory(std::initializer_list<Step> steps) {
        add<About>().year_begins = 7;
        auto& rule = add<CostRule>();
        rule.from = july(1);
        rule.cost_by = CostBy::average;
        for (const Step& step : steps) {
            if (step.bought > 0)
                delivery(july(step.day), unit, pieces(step.bought),
                         Money::millionths(step.bought * step.price.in_millionths()));
            else
                loss(july(step.day), unit, pieces(-step.bought), LossReason::given);
        }
    }
    static Day july(int day) { return day_of(2019, 7, static_cast<unsigned>(day)); }
    Ledger books(int day = 31) const { return replay(shop(), july(day)); }
    CostPartition terms(int day = 31) const { return cost_partition(shop(), books(day), july(day)); }
    std::int64_t left() const { return quantity_partitions(shop(), books(), july(31))[0].stock; }
};

}  // namespace

// Source: OpenStax, Principles of Accounting, Volume 1: Financial Accounting, section 10.3, "Spy Who Loves You",
// perpetual moving average: 7,253 sold, 8,902 left. The text gives 4,732 and its figure 4,733 for the second sale,
// for the unit average is rounded to 26.29 on the way; exactly it is 80,460 / 17 = 4,732.94.
TEST_CASE("spy inventory at the moving average: 7,252.94 sold, 8,902.06 left") {
    const Inventory spy{{1, 150, Money::units(21)},
                        {5, -120, {}},
                        {10, 225, Money::units(27)},
                        {15, -180, {}},
                        {25, 210, Money::units(33)}};
    CHECK(spy.terms(5).given.materials == Money::units(2'520));
    CHECK(spy.terms(10).stock.materials == Money::units(6'705));  // 255 at 26.29
    CHECK(spy.terms().given.materials == Money::millionths(7'252'941'176));
    CHECK(spy.terms().stock.materials == Money::millionths(8'902'058'824));
    CHECK(spy.terms().in.materials == Money::units(16'155));
    CHECK(spy.left() == 285'000);
    CHECK(spy.books().findings.empty());
}

// Source: a worked answer on an accounting question-and-answer page, which rounds nowhere: 3,000 at 0.60, 4,000 at
// 0.74, 4,400 sold, 2,200 at 0.80, 2,100 sold: averages 0.68 and 0.735, sold 2,992 and 1,543.50, left 2,700 at
// 1,984.50.
TEST_CASE("an average that comes out even: 4,535.50 sold, 1,984.50 left") {
    const Inventory inventory{{1, 3'000, Money::hundredths(60)},
                              {2, 4'000, Money::hundredths(74)},
                              {3, -4'400, {}},
                              {4, 2'200, Money::hundredths(80)},
                              {5, -2'100, {}}};
    CHECK(inventory.terms(3).given.materials == Money::units(2'992));
    CHECK(inventory.terms().given.materials == Money::hundredths(453'550));
    CHECK(inventory.terms().stock.materials == Money::hundredths(198'450));
    CHECK(inventory.left() == 2'700'000);
}

// Source: OpenStax, the same volume, section 10.1, Harry's: 50 at 7 and 20 at 7, 18 left: at one price the average is
// the price.
TEST_CASE("52 gone at one price: 364 gone, 126 left") {
    const Inventory harry{{2, 50, Money::units(7)}, {9, 20, Money::units(7)}, {20, -52, {}}};
    CHECK(harry.terms().given.materials == Money::units(364));
    CHECK(harry.terms().stock.materials == Money::units(126));
}

// Source: OpenStax, the same volume, exercises of chapter 10, inputs only; no answers are printed. The first average is
// arithmetic: 240 at 100 less 160, with 520 at 103, is 61,560 / 600 = 102.60.
TEST_CASE("exercises A and B of the chapter keep every unit and every penny at the average") {
    const Inventory a{{1, 240, Money::units(100)}, {2, -160, {}}, {3, 520, Money::units(103)}, {4, -400, {}},
                      {5, 400, Money::units(110)}, {6, -370, {}}};
    CHECK(a.terms(4).given.materials == Money::units(16'000 + 41'040));
    CHECK(a.terms().in == a.terms().out());
    CHECK(a.terms().in.materials == Money::units(240 * 100 + 520 * 103 + 400 * 110));
    CHECK(a.left() == 230'000);
    const Inventory b{{1, 420, Money::units(200)}, {2, -150, {}}, {3, 250, Money::units(205)}, {4, -275, {}},
                      {5, 200, Money::units(215)}, {6, -260, {}}};
    CHECK(b.terms().in == b.terms().out());
    CHECK(b.terms().in.materials == Money::units(420 * 200 + 250 * 205 + 200 * 215));
    CHECK(b.left() == 185'000);
}
