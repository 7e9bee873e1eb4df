#include "domain/decisions/tin.h"

#include "domain/ledger/takings.h"

namespace dyestead {

Tin tin(const Records& records, const Fair& fair) {
    Tin result;
    for (const Taking& taking : takings(records.shop, records.ledger, {fair.date, fair.date})) {
        if (taking.fact != ref(fair)) continue;
        result.at_prices = taking.by_price;
        result.let_off = taking.let_off;
    }
    for (const SoldLine& line : records.ledger.sold) {
        if (line.price || line.fact.kind != kKindOf<FairLine>) continue;
        const FairLine* sold = records.shop.find(Key<FairLine>{line.fact.key});
        result.price_missing = result.price_missing || (sold != nullptr && sold->head == fair.key);
    }
    result.change_float = fair.change_float.value_or(Money{});
    result.card = card_takings(fair);
    result.expected = result.change_float + result.at_prices - result.let_off - result.card;
    result.counted = fair.cash_in_tin;
    if (result.counted) result.difference = *result.counted - result.expected;
    return result;
}

}  // namespace dyestead
