#include <algorithm>

#include "domain/decisions/fair_plan.h"
#include "domain/ledger/fees.h"
#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

double bundles_off(const Shop& shop, const Fair& fair, double list_a_bar) {
    double off = 0;
    for (const FairBundle& bundle : shop.all<FairBundle>())
        if (bundle.head == fair.key) off += bundle.sold * (bundle.bars * list_a_bar - number(bundle.price));
    return off;
}

}  // namespace

FairResult fair_result(const Shop& shop, const Ledger& ledger, Key<Fair> key) {
    FairResult result;
    result.fair = key;
    const Fair* fair = shop.find(key);
    if (fair == nullptr) return result;
    const Records records{shop, ledger};
    std::int64_t thousandths = 0;
    for (const FairLine& line : shop.all<FairLine>()) {
        if (line.head != key) continue;
        const auto shelf = line.price ? line.price : shelf_price_in_force(shop, line.bar, fair->date);
        result.lines.push_back({line.bar, line.taken, line.back, number(shelf.value_or(Money{}))});
        const int sold = std::max(0, line.taken - line.back);
        result.sold += sold;
        result.by_price += result.lines.back().takings();
        thousandths += sold * std::int64_t{1'000};
    }
    // Which bars went in the bundles is not written down: their list price is that of the bars sold, on average.
    if (result.sold > 0) result.by_price -= bundles_off(shop, *fair, result.by_price / result.sold);
    result.by_price -= number(fair->reductions.value_or(Money{}));

    const double float_in = number(fair->change_float.value_or(Money{}));
    const double cards = number(fair->card_takings.value_or(Money{}));
    if (fair->cash_in_tin) {
        result.in_the_tin = float_in + result.by_price - cards;
        result.counted = number(*fair->cash_in_tin);
        result.difference = *result.counted - *result.in_the_tin;
    }
    result.takings = fair->cash_in_tin ? *result.counted - float_in + cards : result.by_price;
    result.fees = number(fees_of(shop, *fair, thousandths).total());
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
    const double tax = number(sales_tax_in_force(shop, fair->date));
    const double left = result.takings / (1 + tax) - result.fees - result.fixed;
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

}  // namespace dyestead
