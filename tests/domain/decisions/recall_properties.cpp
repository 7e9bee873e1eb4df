// Forward and backward say the same of every two things, and no bar is forgotten or counted twice, for
// every shop there can be.
#include <doctest/doctest.h>

#include "domain/decisions/recall.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/where_used.h"
#include "tests/support/any_act.h"
#include "tests/support/random_selling.h"

using namespace dyestead;
using test::Act;
using test::kFirstDay;

namespace {

constexpr Day kEnd = kFirstDay + Days{test::kDays + 400};

bool holds_goods(const Ledger& ledger, Account account) {
    switch (ledger.accounts.kind(account)) {
        case AccountKind::lot:
        case AccountKind::planting:
        case AccountKind::vat:
        case AccountKind::batch: return true;
        case AccountKind::boundary:
        case AccountKind::out:
        case AccountKind::pool: break;
    }
    return false;
}

}  // namespace

TEST_CASE("what holds some of a thing is what that thing is in, and as well known") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        std::vector<GoodsMove> moves = goods_moved(ledger);
        const auto possible = possible_moves(shop, ledger, moves);
        moves.insert(moves.end(), possible.begin(), possible.end());
        std::vector<Account> all;
        for (Account each = kBoundaries; each < ledger.accounts.end; ++each)
            if (holds_goods(ledger, each)) all.push_back(each);
        if (all.empty()) return;
        const Account from = *rc::gen::elementOf(all);
        const Followed forward = Followed::forward(ledger, moves, {from});
        for (const Account to : all) RC_ASSERT(forward.at(to) == Followed::backward(ledger, moves, {to}).at(from));
    }));
}

TEST_CASE("every bar of a lot is in one heap") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::selling_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        bool out = false;
        for (std::uint32_t lot = 0; lot < ledger.lots.size(); ++lot) {
            const Material* bar = shop.find(shop.all<Lot>()[lot].material);
            if (bar == nullptr || bar->kind != MaterialKind::bar) continue;
            const Account account = ledger.accounts.lots + lot;
            std::int64_t expected = ledger.lots[lot].received;
            for (const Movement& movement : ledger.movements)
                if (movement.to == account && ledger.accounts.kind(movement.from) == AccountKind::out)
                    expected -= movement.quantity;
            std::int64_t told = 0;
            for (const Whereabouts& each : recall(shop, ledger, {account}).whereabouts)
                if (each.of == account) {
                    told += each.quantity;
                    out = out || each.heap == Heap::reachable;
                }
            RC_ASSERT(told == expected);
        }
        RC_CLASSIFY(out, "some with somebody to ask");
    }));
}

TEST_CASE("the steps from a lot never name what does not come from it") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::selling_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        for (std::uint32_t lot = 0; lot < ledger.lots.size(); ++lot) {
            const auto steps = where_used(ledger, lot);
            std::int64_t first = 0;
            for (const UseStep& step : steps)
                if (step.from == ledger.accounts.lots + lot) first += step.quantity;
            RC_ASSERT(first <= ledger.lots[lot].received);
        }
    }));
}
