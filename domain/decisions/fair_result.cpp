// How a fair went: what was taken is the ledger's (takings.h), what should be in the tin is tin.h's.
#include <algorithm>

#include "domain/decisions/fair_plan.h"
#include "domain/decisions/hourly_target.h"
#include "domain/ledger/as_it_stood.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/takings.h"

namespace dyestead {

FairResult fair_result(const Shop& shop, const Ledger& ledger, Key<Fair> key) {
    FairResult result;
    result.fair = key;
    const Fair* fair = shop.find(key);
    if (fair == nullptr) return result;
    const Records records{shop, ledger};
    for (const FairLine& line : shop.all<FairLine>()) {
        if (line.head != key) continue;
        const auto shelf = line.price ? line.price : shelf_price_in_force(shop, line.bar, fair->date);
        result.lines.push_back({line.bar, line.taken, line.back, number(shelf.value_or(Money{}))});
        result.sold += std::max(0, line.taken - line.back);
    }
    double net = 0;
    for (const Taking& taking : takings(shop, ledger, {fair->date, fair->date})) {
        if (taking.fact != ref(*fair)) continue;
        result.by_price = number(taking.asked());
        result.takings = number(taking.gross);
        result.fees = number(taking.fees.total());
        net = number(taking.net());
    }
    result.tin = tin(records, *fair);
    result.fixed = number(fair->fee) + number(fair->travel.value_or(Money{}));

    for (const Movement& movement : ledger.movements) {
        if (movement.to == account(Boundary::sold)) {
            const FairLine* line = records.from<FairLine>(movement);
            if (line == nullptr || line->head != key) continue;
            result.making_cash += number(movement.cost.cash());
            result.making_full += number(movement.cost.full());
            result.making_hours += number(movement.cost.hands_on) / 60;
        } else if (movement.to == account(Boundary::selling)) {
            const FairTime* time = records.from<FairTime>(movement);
            if (time != nullptr && time->head == key) result.own_hours += number(movement.cost.hands_on) / 60;
        }
    }
    result.target = hourly_target(shop, fair->date);
    const double left = net - result.fees - result.fixed;
    result.left = left - result.making_cash;
    if (result.own_hours > 0) result.per_stall_hour = (left - result.making_full) / result.own_hours;
    if (result.own_hours + result.making_hours > 0)
        result.per_hour = (left - result.making_cash) / (result.own_hours + result.making_hours);
    return result;
}

std::optional<Key<Fair>> last_fair(const Shop& shop, Day as_of) {
    const Fair* last = nullptr;
    for (const Fair& each : shop.all<Fair>())
        if (each.date <= as_of && each.ended != FairEnded::did_not_happen &&
            (last == nullptr || each.date > last->date))
            last = &each;
    return last == nullptr ? std::nullopt : std::optional{last->key};
}

FairPlan plan_before(const Shop& shop, const Ledger& ledger, Key<Fair> fair) {
    return fair_plan(shop, as_it_stood(shop, ledger, shop.find(fair)->date - Days{1}), fair);
}

}  // namespace dyestead
