#include <algorithm>

#include "domain/ledger/fees.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/value.h"

namespace dyestead {
namespace {

Cost running(Money money) {
    Cost cost;
    cost.overhead = money;
    return cost;
}

}  // namespace

StallBook::StallBook(Bookkeeper& books)
    : books_{books}, taken_{books.shop()}, times_{books.shop()}, sold_{books.shop()} {}

std::int64_t StallBook::sell(FactRef fact, std::optional<Money> price) {
    const StockLine* line = books_.line_of(fact);
    if (line == nullptr || line->quantity == 0) return 0;
    books_.take(*line, account(Boundary::sold));
    const Material& bar = books_.shop().all<Material>()[line->material];
    if (!price) price = shelf_price_in_force(books_.shop(), bar.key, books_.day());
    if (!price) books_.find(FindingCode::no_price, fact, {bar.name});
    books_.ledger().sold.push_back({fact, books_.day(), line->material, line->quantity, price});
    return line->quantity;
}

void StallBook::post(const Fair& fact) {
    std::int64_t bars = 0;
    for (const FairLine* line : taken_(fact.key)) {
        if (line->back > line->taken) {
            const Material* bar = books_.shop().find(line->bar);
            books_.find(FindingCode::back_more_than_taken, ref(*line), {bar == nullptr ? "" : bar->name});
        }
        bars += sell(ref(*line), line->price);
    }
    const Account selling = account(Boundary::selling);
    books_.enter(Boundary::bills, selling, ref(fact), running(fact.fee));
    books_.enter(Boundary::bills, selling, ref(fact), running(fact.travel.value_or(Money{})));
    books_.enter(Boundary::bills, selling, ref(fact), running(fees_of(books_.shop(), fact, bars).total()));
    for (const FairTime* line : times_(fact.key)) books_.work(line->who, line->time, selling, ref(*line));
}

void StallBook::post(const Sale& fact) {
    std::int64_t bars = 0;
    Money takings;
    for (const SaleLine* line : sold_(fact.key)) {
        const std::int64_t sold = sell(ref(*line), line->price);
        bars += sold;
        try {
            takings += Rate{line->price, Quantity::pieces(1)} * Quantity{Kind::count, sold};
        } catch (const Overflow&) {
            books_.find(FindingCode::too_large, ref(*line));
        }
    }
    const Account selling = account(Boundary::selling);
    books_.enter(Boundary::bills, selling, ref(fact), running(fact.postage.value_or(Money{})));
    books_.enter(Boundary::bills, selling, ref(fact), running(fees_of(books_.shop(), fact, takings, bars).total()));
    books_.work(fact.who, fact.time, selling, ref(fact));
}

}  // namespace dyestead
