// The statements say what the books say, for every shop there can be.
#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "domain/ledger/tie_outs.h"
#include "domain/ledger/write_down.h"
#include "tests/support/any_act.h"

using namespace dyestead;
using test::Act;
using test::kFirstDay;

namespace {

constexpr Day kEnd = kFirstDay + Days{test::kDays + 400};

Day some_day() {
    return kFirstDay + Days{*rc::gen::inRange(0, test::kDays + 50)};
}

}  // namespace

TEST_CASE("over any period every statement ties to the books") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Day first = some_day();
        for (const TieOut& each : tie_outs(shop, ledger, {first, first + Days{*rc::gen::inRange(0, 300)}}))
            RC_ASSERT(each.statement == each.books);
    }));
}

TEST_CASE("two periods in a row earn what the whole of them earns") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Day middle = some_day();
        const Earned early = earned(shop, ledger, {kFirstDay, middle});
        const Earned late = earned(shop, ledger, {middle + Days{1}, kEnd});
        const Earned whole = earned(shop, ledger, {kFirstDay, kEnd});
        RC_ASSERT(early.gross + late.gross == whole.gross);
        RC_ASSERT(early.cost_of_sales + late.cost_of_sales == whole.cost_of_sales);
        RC_ASSERT(early.lost() + late.lost() == whole.lost());
        RC_ASSERT(early.overhead_accrued + late.overhead_accrued == whole.overhead_accrued);
        RC_ASSERT(early.overhead_absorbed + late.overhead_absorbed == whole.overhead_absorbed);
        RC_ASSERT(whole.over_absorbed_in_stock >= Money{});
        RC_ASSERT(whole.over_absorbed_in_sales >= Money{});
    }));
}

TEST_CASE("stock at a day is what the books as of that day hold, lot by lot") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Day day = some_day();
        const Ledger late = replay(shop, kEnd);
        const Ledger then = replay(shop, day);
        const StockValue value = stock_value(shop, late, day);
        const auto lots = lot_quantities(shop, late, day);
        for (std::size_t lot = 0; lot < lots.size(); ++lot) {
            RC_ASSERT(lots[lot].left == then.lots[lot].left);
            RC_ASSERT(lots[lot].received == then.lots[lot].received);
        }
        Cost sum;
        for (const StockItem& item : value.items) {
            sum += item.cost;
            const bool is_lot = then.accounts.kind(item.account) == AccountKind::lot;
            RC_ASSERT(item.cost ==
                      (is_lot ? then.lots[then.accounts.index(item.account)].cost : then.balances[item.account]));
        }
        const CostPartition terms = cost_partition(shop, then, day);
        RC_ASSERT(sum == terms.stock + terms.in_progress);
        RC_ASSERT(value.stock() == terms.stock);
    }));
}

TEST_CASE("nothing is written up, and nothing is written down by more than it cost") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        for (const Valued& each : write_down(shop, ledger, some_day()).items) {
            RC_ASSERT(each.write_down() >= Money{});
            RC_ASSERT(each.write_down() <= std::max(each.cost, Money{}));
        }
    }));
}
