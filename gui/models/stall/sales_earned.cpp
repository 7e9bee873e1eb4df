#include "gui/models/stall/sales_earned.h"

#include "domain/decisions/records.h"
#include "domain/ledger/takings.h"

namespace dyestead::gui {

std::map<Key<Sale>, SaleEarned> sales_earned(const Books& books) {
    const Records records{books.shop, books.ledger};
    std::map<Key<Sale>, SaleEarned> sales;
    for (const Taking& taking : takings(books.shop, books.ledger, Period::up_to(books.as_of()))) {
        if (taking.fact.kind != kKindOf<Sale>) continue;
        const Sale& sale = *books.shop.find(Key<Sale>{taking.fact.key});
        sales[sale.key].left = number(taking.net() - taking.fees.total() - sale.postage.value_or(Money{}));
    }
    for (const Movement& movement : books.ledger.movements) {
        if (movement.to != account(Boundary::sold)) continue;
        const SaleLine* line = records.from<SaleLine>(movement);
        const PowderLine* powder = records.from<PowderLine>(movement);
        if (line == nullptr && powder == nullptr) continue;
        SaleEarned& sale = sales[line != nullptr ? line->head : powder->head];
        sale.making += number(movement.cost.cash());
        sale.left -= number(movement.cost.cash());
    }
    return sales;
}

}  // namespace dyestead::gui
