// Every line of every statement is the sum of the leaves it is followed down to, for every shop there can be.
#include <doctest/doctest.h>

#include "domain/ledger/earned.h"
#include "domain/ledger/follow.h"
#include "domain/ledger/replay.h"
#include "domain/values/cost_parts.h"
#include "tests/support/any_act.h"

using namespace dyestead;
using test::Act;
using test::kFirstDay;

namespace {

constexpr Day kEnd = kFirstDay + Days{test::kDays + 400};

Period some_period() {
    const Day first = kFirstDay + Days{*rc::gen::inRange(0, test::kDays)};
    return {first, first + Days{*rc::gen::inRange(0, test::kDays)}};
}

}  // namespace

TEST_CASE("each kind of stock, loss and gift is the sum of its leaves") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Period period = some_period();
        const StockValue stock = stock_value(shop, ledger, period.last);
        const Earned year = earned(shop, ledger, period);
        for (std::size_t i = 0; i < kStockKinds; ++i)
            RC_ASSERT(sum(follow(shop, ledger, static_cast<StockKind>(i), period)) == stock.of[i]);
        for (std::size_t i = 0; i < kLossKinds; ++i)
            RC_ASSERT(sum(follow(shop, ledger, static_cast<LossKind>(i), period)) == year.losses[i]);
    }));
}

TEST_CASE("each line of what a period cost is the sum of its leaves") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Period period = some_period();
        const Earned year = earned(shop, ledger, period);
        for (const PeriodCost& each : year.period_costs)
            RC_ASSERT(sum(follow(shop, ledger, each.of, period)) == each.cost);
        RC_ASSERT(sum(follow(shop, ledger, Boundary::selling, period)) == year.selling);
        RC_ASSERT(sum(follow(shop, ledger, Boundary::overhead, period)) ==
                  cost_of_overhead(year.overhead_accrued - year.overhead_absorbed));
        const std::array bills{year.stalls, year.travel, year.postage, year.payment_fees};
        Cost people = year.selling;
        for (std::size_t i = 0; i < bills.size(); ++i) {
            RC_ASSERT(sum(follow(shop, ledger, static_cast<SellingPart>(i), period)) == cost_of_overhead(bills[i]));
            people -= cost_of_overhead(bills[i]);
        }
        RC_ASSERT(sum(follow(shop, ledger, SellingPart::people, period)) == people);
    }));
}

TEST_CASE("hours by stage and money by kind are the sums of their leaves") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Period period = some_period();
        const MoneyFlow flow = money_flow(shop, ledger, period);
        for (std::size_t i = 0; i < kTakenAt; ++i)
            RC_ASSERT(sum(follow(shop, ledger, static_cast<TakenAt>(i), period)) == cost_of_materials(flow.in[i]));
        for (std::size_t i = 0; i < kPaidFor; ++i)
            RC_ASSERT(sum(follow(shop, ledger, static_cast<PaidFor>(i), period)) == cost_of_materials(flow.out[i]));
        std::array<Cost, kStages> stages{};
        for (const StageHours& line : hours(shop, ledger, period)) {
            stages[static_cast<std::size_t>(line.stage)].hands_on += line.time;
            stages[static_cast<std::size_t>(line.stage)].labour += line.labour;
        }
        for (std::size_t i = 0; i < kStages; ++i)
            RC_ASSERT(sum(follow(shop, ledger, static_cast<Stage>(i), period)) == stages[i]);
    }));
}

TEST_CASE("takings, running costs taken up and what was earned are the sums of their leaves") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Period period = some_period();
        const Earned year = earned(shop, ledger, period);
        const auto leaves = [&](EarnedPart part) { return sum(follow(shop, ledger, part, period)); };
        RC_ASSERT(leaves(EarnedPart::takings) == cost_of_materials(year.gross));
        RC_ASSERT(leaves(EarnedPart::sales_tax) == cost_of_materials(year.tax));
        RC_ASSERT(leaves(EarnedPart::net_takings) == cost_of_materials(year.net()));
        RC_ASSERT(leaves(EarnedPart::tin_difference) == cost_of_materials(year.tin_difference));
        RC_ASSERT(leaves(EarnedPart::overhead_accrued) == cost_of_overhead(year.overhead_accrued));
        RC_ASSERT(leaves(EarnedPart::overhead_absorbed) == cost_of_overhead(year.overhead_absorbed));
        RC_ASSERT(leaves(EarnedPart::under_absorbed) == cost_of_overhead(year.under_absorbed()));
        RC_ASSERT(leaves(EarnedPart::over_absorbed_in_stock) == cost_of_overhead(year.over_absorbed_in_stock));
        RC_ASSERT(leaves(EarnedPart::over_absorbed_in_sales) == cost_of_overhead(year.over_absorbed_in_sales));
        const Cost margin = leaves(EarnedPart::gross_margin);
        RC_ASSERT(margin.cash() == year.gross_margin_without_labour());
        RC_ASSERT(margin.full() == year.gross_margin());
        const Cost left = leaves(EarnedPart::earned);
        RC_ASSERT(left.cash() == year.earned_without_labour());
        RC_ASSERT(left.full() == year.earned());
    }));
}
