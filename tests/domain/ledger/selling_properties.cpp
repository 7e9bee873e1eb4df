// Of shops that mostly pour, cut and sell: nothing leaks, and what is said of held bars while they are allocated is
// what the finished books say.
#include <algorithm>

#include <doctest/doctest.h>

#include "domain/ledger/holds.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "tests/support/any_act.h"
#include "tests/support/random_selling.h"

using namespace dyestead;
using test::Act;
using test::kFirstDay;

namespace {

constexpr Day kEnd = kFirstDay + Days{test::kDays + 400};

}  // namespace

TEST_CASE("every penny, minute and bar of a shop that sells much stands in one term") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::selling_shop(acts);
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
        RC_CLASSIFY(!ledger.powder_sold.empty(), "powder was sold");
    }));
}

TEST_CASE("held bars leave for a sale with a finding, and only they do") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::selling_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Holds held = holds(shop, ledger);
        std::vector<std::pair<Day, std::string>> went;
        for (const Movement& movement : ledger.movements) {
            const bool leaves =
                movement.to == account(Boundary::sold) || ledger.accounts.kind(movement.to) == AccountKind::out;
            if (!leaves || ledger.accounts.kind(movement.from) != AccountKind::lot || movement.quantity == 0) continue;
            const std::uint32_t lot = ledger.accounts.index(movement.from);
            if (held.why(lot, movement.on())) went.emplace_back(movement.on(), shop.all<Lot>()[lot].code);
        }
        std::vector<std::pair<Day, std::string>> said;
        for (const Finding& finding : ledger.findings)
            if (finding.code == FindingCode::sold_while_held) said.emplace_back(finding.day, finding.args[0]);
        std::ranges::sort(went);
        std::ranges::sort(said);
        // What a second drying of a vat, or a second cut of a batch, claims to hold is held with it.
        constexpr std::array kContradictions{FindingCode::vat_dried_twice, FindingCode::vat_dried_before_begun,
                                             FindingCode::batch_cut_twice, FindingCode::cut_before_pouring};
        for (const Finding& finding : ledger.findings)
            if (std::ranges::find(kContradictions, finding.code) != kContradictions.end()) return;
        RC_CLASSIFY(!said.empty(), "some held bars went");
        RC_CLASSIFY(!ledger.returned.empty(), "some bars came back");
        RC_ASSERT(went == said);
    }));
}
