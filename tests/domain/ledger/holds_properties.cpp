// What is said of held bars while they are allocated is what the finished books say, for every shop there can be.
#include <algorithm>

#include <doctest/doctest.h>

#include "domain/ledger/holds.h"
#include "domain/ledger/replay.h"
#include "tests/support/any_act.h"

using namespace dyestead;
using test::Act;
using test::kFirstDay;

TEST_CASE("held bars leave for a sale with a finding, and only they do") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kFirstDay + Days{test::kDays + 400});
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
        RC_CLASSIFY(!said.empty(), "some held bars went");
        RC_CLASSIFY(!ledger.returned.empty(), "some bars came back");
        RC_ASSERT(went == said);
    }));
}
