// Before a fair and after it.
#include "domain/decisions/fair_plan.h"

#include <doctest/doctest.h>

#include "tests/domain/decisions/soap_shop.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

struct Stall : SoapShop {
    Key<Fair> coming;

    // Bars that were here already, at 1 each; sold at 4; `sold` at each fair of six hours, of as many taken or ten
    // more.
    Stall(std::initializer_list<int> sold, bool sold_out, std::int64_t bars_left = 60) {
        std::int64_t all = bars_left;
        for (const int each : sold) all += each;
        already_here(day_of(2026, 1, 1), bar, pieces(all), Money::units(all));
        auto& price = add<Price>();
        price.from = day_of(2026, 1, 1);
        price.bar = bar;
        price.shelf = Money::units(4);
        int month = 1;
        for (const int each : sold)
            fair(day_of(2026, static_cast<unsigned>(++month), 10), sold_out ? each : each + 10, sold_out ? 0 : 10);
        auto& next = add<Fair>();
        coming = next.key;
        next.date = day_of(2026, 6, 20);
        next.noted = day_of(2026, 5, 1);
        next.name = "green market";
        next.fee = Money::units(30);
        next.open = minutes(360);
    }

    Key<Fair> fair(Day date, int taken, int back) {
        auto& fact = add<Fair>();
        fact.date = date;
        fact.name = "green market";
        fact.fee = Money::units(30);
        fact.open = minutes(360);
        const auto key = fact.key;
        auto& line = add<FairLine>(key);
        line.bar = bar;
        line.taken = taken;
        line.back = back;
        auto& time = add<FairTime>(key);
        time.who = who;
        time.time = minutes(480);
        return key;
    }
};

}  // namespace

TEST_CASE("what sold before says how many to take, and the bars are those that are cured") {
    Stall s({20, 24, 22}, false);
    const FairPlan plan = fair_plan(s.shop(), s.ledger(), s.coming);
    REQUIRE(plan.bars.size() == 1);
    CHECK(plan.bars[0].there == 60);
    CHECK(plan.bars[0].days_on_record == 3);
    CHECK(plan.bars[0].expected == Approx(22).epsilon(0.05));
    CHECK(plan.bars[0].take > 22);
    CHECK(plan.bars[0].take < 60);
    CHECK(plan.stood_before);
    CHECK(plan.busy == Approx(1));
    CHECK(plan.own_hours == Approx(8));
    REQUIRE(plan.break_even);
    CHECK(*plan.break_even == Approx(30 / *plan.contribution));
    CHECK(*plan.break_even_full == Approx((30 + 8 * 12) / *plan.contribution));
    CHECK(next_fair(s.shop(), s.today) == s.coming);
}

TEST_CASE("never more than there are or than fit; a display of each kind before anything else") {
    Stall s({20, 24, 22}, false, 5);
    CHECK(fair_plan(s.shop(), s.ledger(), s.coming).bars[0].take == 5);
    CHECK(fair_plan(s.shop(), s.ledger(), s.coming, {.room = 3}).bars[0].take == 3);
    s.all<Price>().front().shelf = Money::hundredths(1);
    CHECK(fair_plan(s.shop(), s.ledger(), s.coming, {.room = 50, .at_least = 2}).bars[0].take >= 2);
}

TEST_CASE("where every fair sold out, more was wanted, and the plan says that it only knows at least") {
    Stall out({20, 24, 22}, true);
    Stall left({20, 24, 22}, false);
    const FairPlan plan = fair_plan(out.shop(), out.ledger(), out.coming);
    CHECK(plan.bars[0].at_least_only);
    CHECK(plan.bars[0].expected > fair_plan(left.shop(), left.ledger(), left.coming).bars[0].expected + 3);
}

TEST_CASE("bars still in cure on the day stay at home") {
    Stall s({20}, false, 0);
    const auto poured = s.batch(day_of(2026, 5, 20), s.loaf, s.bar);
    s.cut(day_of(2026, 5, 21), poured, 10, 0, day_of(2026, 7, 1));
    const FairPlan plan = fair_plan(s.shop(), s.ledger(), s.coming);
    CHECK(plan.bars[0].there == 0);
    CHECK(plan.bars[0].in_cure == 10);
    CHECK(plan.bars[0].take == 0);
    CHECK_FALSE(plan.break_even);
}

TEST_CASE("bars on hold are never packed") {
    Stall s({20}, false, 0);
    const auto poured = s.batch(day_of(2026, 3, 20), s.loaf, s.bar);
    const auto lot = s.cut(day_of(2026, 3, 21), poured, 10, 0, day_of(2026, 4, 20));
    CHECK(fair_plan(s.shop(), s.ledger(), s.coming).bars[0].there == 10);
    auto& hold = s.add<Hold>();
    hold.date = day_of(2026, 4, 25);
    hold.lot = lot;
    hold.why = "to be looked at";
    const FairPlan plan = fair_plan(s.shop(), s.ledger(), s.coming);
    CHECK(plan.bars[0].there == 0);
    CHECK(plan.bars[0].held == 10);
    CHECK(plan.bars[0].take == 0);
}

TEST_CASE("no fair stood yet: a plan all the same, and no figure that is not a number") {
    Stall s({}, false);
    const FairPlan plan = fair_plan(s.shop(), s.ledger(), s.coming);
    CHECK_FALSE(plan.stood_before);
    CHECK(plan.bars[0].days_on_record == 0);
    CHECK(plan.bars[0].expected >= 0);
    CHECK(plan.expected_earned == plan.expected_earned);
}

TEST_CASE("afterwards: what should be in the tin, and what an hour earned both ways") {
    Stall s({20}, false);
    const auto key = s.all<Fair>().front().key;
    auto& fair = s.at(key);
    fair.change_float = Money::units(40);
    fair.card_takings = Money::units(30);
    fair.reductions = Money::units(2);
    fair.cash_in_tin = Money::units(87);
    auto& bundle = s.add<FairBundle>(key);
    bundle.bars = 3;
    bundle.price = Money::units(11);
    bundle.sold = 2;
    const FairResult result = fair_result(s.shop(), s.ledger(), key);
    CHECK(result.sold == 20);
    CHECK(result.by_price == Approx(80 - 2 - 2));  // two reductions of 1 in bundles
    CHECK(result.tin.expected == Money::units(40 + 76 - 30));
    CHECK(result.tin.difference == Money::units(1));
    CHECK(result.takings == Approx(77));
    CHECK(result.making_cash == Approx(20));
    CHECK(result.per_stall_hour == Approx((77 - 30 - 20) / 8.0));
    CHECK(result.per_hour == Approx((77 - 30 - 20) / 8.0));  // nobody's hours are in these bars
    CHECK(last_fair(s.shop(), s.today) == key);
    // What came of it is held against what was known the day before, not against what it taught.
    const FairPlan before = plan_before(s.shop(), s.ledger(), key);
    CHECK(before.fair == key);
    REQUIRE(before.bars.size() == 1);
    CHECK(before.bars[0].days_on_record == 0);
    CHECK(before.bars[0].there >= result.sold);
    fair.cash_in_tin.reset();
    const FairResult uncounted = fair_result(s.shop(), s.ledger(), key);
    CHECK_FALSE(uncounted.tin.difference);
    CHECK(uncounted.takings == Approx(76));
}

TEST_CASE("a loaf must be poured as long before the fair as the newest one took to be saleable") {
    Stall s({20, 24}, false);
    CHECK_FALSE(fair_plan(s.shop(), s.ledger(), s.coming).bars[0].pour_by.has_value());
    s.cut(day_of(2026, 2, 2), s.batch(day_of(2026, 2, 1), s.loaf, s.bar), 10, 0, day_of(2026, 3, 31));
    s.cut(day_of(2026, 4, 2), s.batch(day_of(2026, 4, 1), s.loaf, s.bar), 10, 0, day_of(2026, 4, 29));
    // Four weeks from pouring to the shelf; the fair is on 20 June.
    CHECK(fair_plan(s.shop(), s.ledger(), s.coming).bars[0].pour_by == day_of(2026, 5, 23));
}

TEST_CASE("what an hour there should have brought is that of the day") {
    Stall s({}, false);
    const auto key = s.fair(day_of(2026, 5, 10), 20, 5);
    auto& raised = s.add<Pay>();
    raised.from = day_of(2026, 5, 20);
    raised.person = s.who;
    raised.per_hour = Money::units(30);
    CHECK(*fair_result(s.shop(), s.ledger(), key).target == Approx(12));
}
