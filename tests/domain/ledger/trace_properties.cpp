// Every figure is the sum of what the facts brought into it, to the last unit, for every shop there can be.
#include <doctest/doctest.h>

#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "domain/ledger/trace.h"
#include "domain/ledger/where_used.h"
#include "tests/support/any_act.h"

using namespace dyestead;
using test::Act;
using test::kFirstDay;

namespace {

constexpr Day kEnd = kFirstDay + Days{test::kDays + 400};

const Cost& of(const CostPartition& terms, Term term) {
    switch (term) {
        case Term::in: return terms.in;
        case Term::stock: return terms.stock;
        case Term::in_progress: return terms.in_progress;
        case Term::sold: return terms.sold;
        case Term::lost: return terms.lost;
        case Term::given: return terms.given;
        case Term::period: return terms.period;
    }
    return terms.in;
}

Day some_day() {
    return kFirstDay + Days{*rc::gen::inRange(0, test::kDays + 50)};
}

}  // namespace

TEST_CASE("what every account holds is the sum of its leaves") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Day day = some_day();
        const std::vector<Cost> held = balances_at(ledger, day);
        for (Account each = 0; each < ledger.accounts.end; ++each)
            RC_ASSERT(sum(trace(ledger, each, day)) == held[each]);
    }));
}

TEST_CASE("what a lot was made of is the sum of its leaves, though all of it is gone") {
    CHECK(rc::check([](std::vector<Act> acts) {
        // The cost of a lot at the moving average is in its material's pool, with that of all the others.
        std::erase_if(acts, [](const Act& act) { return act.what == test::kCostRuleAct; });
        const Ledger ledger = replay(test::random_shop(acts), kEnd);
        for (std::size_t lot = 0; lot < ledger.lots.size(); ++lot) {
            const auto account = static_cast<Account>(ledger.accounts.lots + lot);
            RC_ASSERT(sum(trace_into(ledger, account, kEnd)) == ledger.lots[lot].cost_in);
        }
    }));
}

TEST_CASE("every term of the partition is the sum of its leaves, at a day and over a period") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Day day = some_day();
        const Period period{some_day(), kEnd};
        const CostPartition then = cost_partition(shop, ledger, day);
        const CostPartition before = cost_partition(shop, ledger, period.before());
        const CostPartition after = cost_partition(shop, ledger, period.last);
        for (std::size_t i = 0; i < kTerms; ++i) {
            const auto term = static_cast<Term>(i);
            RC_ASSERT(sum(trace(shop, ledger, term, Period::up_to(day))) == of(then, term));
            // What is in cure changes term without a movement.
            if (term == Term::stock || term == Term::in_progress) continue;
            RC_ASSERT(sum(trace(shop, ledger, term, period)) == of(after, term) - of(before, term));
        }
    }));
}

TEST_CASE("no leaf of a lot is below nought while no cost is, and none is larger than what its fact brought in") {
    CHECK(rc::check([](std::vector<Act> acts) {
        // A credit, a discount and a count may each take back what another fact brought in.
        std::erase_if(acts, [](const Act& act) { return act.what >= test::kFirstCupboardAct; });
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        // A shortfall settled at another cost than it was taken at takes back what was never there.
        RC_PRE(ledger.balance(Boundary::shortfall).is_zero());
        std::vector<Leaf> brought_in;
        for (const Movement& movement : ledger.movements)
            brought_in.push_back(
                {ledger.sources[movement.source].fact, static_cast<Boundary>(movement.from), movement.cost});
        for (Account lot = ledger.accounts.lots; lot < ledger.accounts.plantings; ++lot)
            for (const Leaf& leaf : trace(ledger, lot, kEnd)) {
                Cost most;
                for (const Leaf& each : brought_in)
                    if (each.fact == leaf.fact && each.through == leaf.through) most += each.cost;
                RC_ASSERT(leaf.cost.materials >= Money{});
                RC_ASSERT(leaf.cost.hands_on >= Minutes{});
                RC_ASSERT(leaf.cost.materials <= most.materials);
                RC_ASSERT(leaf.cost.hands_on <= most.hands_on);
            }
    }));
}

TEST_CASE("forward from a lot, no more of its own goods are used than it received") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        for (std::uint32_t lot = 0; lot < ledger.lots.size(); ++lot) {
            std::int64_t used = 0;
            for (const UseStep& step : where_used(ledger, lot))
                if (step.from == ledger.accounts.lots + lot) used += step.quantity;
            RC_ASSERT(used == ledger.lots[lot].received - ledger.lots[lot].left);
        }
    }));
}
