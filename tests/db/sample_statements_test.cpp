// Every figure on every statement of the sample shop, followed down to the records it comes from: the sum of the leaves
// is the figure, to the unit.
#include <doctest/doctest.h>

#include <array>
#include <cstdlib>

#include "db/csv_folder.h"
#include "domain/ledger/earned.h"
#include "domain/ledger/follow.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "domain/values/cost_parts.h"

using namespace dyestead;

namespace {

const std::array kPeriods{
    Period{day_of(2024, 1, 1), day_of(2024, 12, 31)},
    Period{day_of(2025, 1, 1), day_of(2025, 12, 31)},
    Period{day_of(2026, 1, 1), day_of(2026, 11, 1)},
    Period{day_of(2024, 1, 1), day_of(2026, 11, 1)},
};

struct Sample {
    Shop shop = db::read_csv_folder(std::filesystem::path{DYESTEAD_SOURCE_DIR} / "sample-shop" / "shop");
    Ledger ledger = replay(shop, day_of(2026, 11, 1));

    // The leaves of a line, each of which leads to a record that is there.
    Cost leaves(const StatementLine& line, Period period) {
        const std::vector<Leaf> all = follow(shop, ledger, line, period);
        for (const Leaf& leaf : all) CHECK_FALSE(name_of(shop, leaf.fact).empty());
        if (!all.empty()) ++lines_with_leaves;
        return sum(all);
    }
    int lines_with_leaves = 0;
};

}  // namespace

TEST_CASE("stock and work in progress, by kind and item by item") {
    Sample sample;
    for (const Period period : kPeriods) {
        const StockValue stock = stock_value(sample.shop, sample.ledger, period.last);
        for (std::size_t i = 0; i < kStockKinds; ++i)
            CHECK(sample.leaves(static_cast<StockKind>(i), period) == stock.of[i]);
        for (const StockItem& item : stock.items)
            CHECK(sum(trace(sample.ledger, item.account, period.last)) == item.cost);
        CHECK(stock.items.size() > 30);
        CHECK(sample.leaves(Term::stock, period) == stock.stock());
        CHECK(sample.leaves(Term::in_progress, period) == stock.in_progress());
    }
    CHECK(sample.lines_with_leaves > 20);
}

TEST_CASE("what a period sold, lost, gave away and cost") {
    Sample sample;
    for (const Period period : kPeriods) {
        const Earned year = earned(sample.shop, sample.ledger, period);
        CHECK(sample.leaves(Term::sold, period) == year.cost_of_sales);
        CHECK(sample.leaves(Term::lost, period) == year.lost());
        CHECK(sample.leaves(Term::given, period) == year.given());
        for (std::size_t i = 0; i < kLossKinds; ++i)
            CHECK(sample.leaves(static_cast<LossKind>(i), period) == year.losses[i]);
        CHECK(sample.leaves(Boundary::selling, period) == year.selling);
        CHECK(sample.leaves(SellingPart::stalls, period) == cost_of_overhead(year.stalls));
        CHECK(sample.leaves(SellingPart::travel, period) == cost_of_overhead(year.travel));
        CHECK(sample.leaves(SellingPart::postage, period) == cost_of_overhead(year.postage));
        CHECK(sample.leaves(SellingPart::payment_fees, period) == cost_of_overhead(year.payment_fees));
        CHECK(sample.leaves(SellingPart::people, period) ==
              year.selling - cost_of_overhead(year.stalls + year.travel + year.postage + year.payment_fees));
        for (const PeriodCost& each : year.period_costs) CHECK(sample.leaves(each.of, period) == each.cost);
        CHECK(sample.leaves(Boundary::overhead, period) ==
              cost_of_overhead(year.overhead_accrued - year.overhead_absorbed));
    }
    CHECK(sample.lines_with_leaves > 60);
}

TEST_CASE("takings, money out and hours") {
    Sample sample;
    for (const Period period : kPeriods) {
        const MoneyFlow flow = money_flow(sample.shop, sample.ledger, period);
        for (std::size_t i = 0; i < kTakenAt; ++i)
            CHECK(sample.leaves(static_cast<TakenAt>(i), period) == cost_of_materials(flow.in[i]));
        for (std::size_t i = 0; i < kPaidFor; ++i)
            CHECK(sample.leaves(static_cast<PaidFor>(i), period) == cost_of_materials(flow.out[i]));
        CHECK(flow.total_in() == earned(sample.shop, sample.ledger, period).gross);
        std::array<Cost, kStages> stages{};
        for (const StageHours& line : hours(sample.shop, sample.ledger, period)) {
            stages.at(static_cast<std::size_t>(line.stage)).hands_on += line.time;
            stages.at(static_cast<std::size_t>(line.stage)).labour += line.labour;
        }
        for (std::size_t i = 0; i < kStages; ++i) CHECK(sample.leaves(static_cast<Stage>(i), period) == stages.at(i));
    }
    CHECK(sample.lines_with_leaves > 60);
}
