// Of shops that mostly pour, cut and sell: nothing leaks, and what is said of held bars while they are allocated is
// what the finished books say.
#include <algorithm>
#include <array>

#include <doctest/doctest.h>

#include "domain/ledger/holds.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "tests/support/any_act.h"

using namespace dyestead;
using test::Act;
using test::kFirstDay;

namespace {

constexpr Day kEnd = kFirstDay + Days{test::kDays + 400};

// Deliveries, batches, cuts, sales and what comes of them, in a third of the time.
Shop selling_shop(std::vector<Act> acts) {
    constexpr std::array kSells{0, 7, 7, 8, 8, 8, 11, 11, 10, 17, 18, 18, 19, 19, 20, 20, 21, 23, 24};
    for (Act& act : acts) {
        act.what = kSells[static_cast<std::size_t>(act.what) % kSells.size()];
        act.day /= 3;
    }
    return test::random_shop(acts);
}

}  // namespace

TEST_CASE("every penny, minute and bar of a shop that sells much stands in one term") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = selling_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        std::vector<Day> days{kEnd};
        for (const Movement& movement : ledger.movements) days.push_back(movement.on());
        for (const Day day : days) {
            const CostPartition terms = cost_partition(shop, ledger, day);
            RC_ASSERT(terms.in == terms.out());
            for (const QuantityPartition& term : quantity_partitions(shop, ledger, day)) {
                RC_ASSERT(term.in + term.made == term.out());
                RC_ASSERT(term.stock >= 0);
                RC_ASSERT(term.sold >= 0);
            }
        }
        for (const LotState& lot : ledger.lots) RC_ASSERT(lot.left > 0 || lot.cost.is_zero());
        std::int64_t out = 0;
        for (Account each = ledger.accounts.outs; each < ledger.accounts.end; ++each)
            out += ledger.balances[each].is_zero() ? 0 : 1;
        RC_CLASSIFY(out > 0, "bars out at the end");
        RC_CLASSIFY(!ledger.returned.empty(), "some bars came back");
    }));
}
