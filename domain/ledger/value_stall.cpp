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
    : books_{books}, times_{books.shop()}, out_(books.shop().all<OutAtShop>().size()) {
    for (const Returned& fact : books.shop().all<Returned>())
        if (const auto lot = books.place(fact.lot)) sold_of_[*lot] = {};
}

Cost StallBook::Piece::take(std::int64_t taken) {
    const Cost share = share_of(cost, taken, quantity);
    cost -= share;
    quantity -= taken;
    return share;
}

std::vector<StallBook::Piece> StallBook::take(const StockLine& line, Account to) {
    const Ledger& ledger = books_.ledger();
    const std::size_t before = ledger.movements.size();
    books_.take(line, to);
    std::vector<Piece> pieces;
    for (std::size_t i = before; i < ledger.movements.size(); ++i) {
        const Movement& movement = ledger.movements[i];
        if (movement.to != to) continue;
        const bool of_lot = ledger.accounts.kind(movement.from) == AccountKind::lot;
        // What was averaged leaves its pool beside the lot.
        if (movement.quantity == 0 && !pieces.empty()) pieces.back().cost += movement.cost;
        if (movement.quantity == 0) continue;
        pieces.push_back({of_lot ? ledger.accounts.index(movement.from) : kNoLot, movement.quantity, movement.cost});
    }
    return pieces;
}

void StallBook::sold(const Piece& piece) {
    const auto all = sold_of_.find(piece.lot);
    if (all == sold_of_.end()) return;
    all->second.quantity += piece.quantity;
    all->second.cost += piece.cost;
}

void StallBook::come_back(Account from, const StockLine& line, const Draw& draw, const Cost& cost) {
    books_.put_in(line.material, draw.lot, from, books_.source(line.fact, line.material, true), draw.quantity, cost);
}

std::int64_t StallBook::sell(FactRef fact, std::optional<Money> price) {
    const StockLine* line = books_.line_of(fact);
    if (line == nullptr || line->quantity == 0) return 0;
    for (const Piece& piece : take(*line, account(Boundary::sold))) sold(piece);
    const Material& bar = books_.shop().all<Material>()[line->material];
    if (!price) price = shelf_price_in_force(books_.shop(), bar.key, books_.day());
    if (!price) books_.find(FindingCode::no_price, fact, {bar.name});
    books_.ledger().sold.push_back({fact, books_.day(), line->material, line->quantity, price});
    return line->quantity;
}

Money StallBook::sell(const PowderLine& powder) {
    const StockLine* line = books_.line_of(ref(powder));
    if (line == nullptr) return {};
    if (line->quantity == 0) {
        if (!powder.price.is_zero()) books_.find(FindingCode::nothing_in_it, ref(powder));
        return {};
    }
    books_.take(*line, account(Boundary::sold));
    books_.ledger().powder_sold.push_back({ref(powder), books_.day(), line->material, line->quantity, powder.price});
    return powder.price;
}

void StallBook::post(const Fair& fact) {
    std::int64_t bars = 0;
    for (const FairLine* line : books_.shop_lines().taken(fact)) {
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
    for (const FairTime* line : times_(fact)) books_.work(line->who, line->time, selling, ref(*line));
}

void StallBook::post(const Sale& fact) {
    std::int64_t bars = 0;
    Money takings;
    for (const SaleLine* line : books_.shop_lines().sold(fact)) {
        const std::int64_t sold = sell(ref(*line), line->price);
        bars += sold;
        try {
            takings += Rate{line->price, Quantity::pieces(1)} * Quantity{Kind::count, sold};
        } catch (const Overflow&) {
            books_.find(FindingCode::too_large, ref(*line));
        }
    }
    for (const PowderLine* line : books_.shop_lines().powder(fact)) {
        const Money asked = sell(*line);
        try {
            takings += asked;
        } catch (const Overflow&) {
            books_.find(FindingCode::too_large, ref(*line));
        }
    }
    const Account selling = account(Boundary::selling);
    books_.enter(Boundary::bills, selling, ref(fact), running(fact.postage.value_or(Money{})));
    takings += fact.postage_paid.value_or(Money{});
    books_.enter(Boundary::bills, selling, ref(fact), running(fees_of(books_.shop(), fact, takings, bars).total()));
    books_.work(fact.who, fact.time, selling, ref(fact));
}

void StallBook::post(const OutAtShop& fact) {
    const StockLine* line = books_.line_of(ref(fact));
    const std::uint32_t place = books_.place(fact);
    if (line != nullptr) out_[place] = take(*line, books_.out(place));
}

void StallBook::post(const OutSettled& fact) {
    const OutAtShop* from = books_.shop().find(fact.out);
    for (const StockLine& line : books_.lines()) {
        if (line.left_out) continue;
        const Account out = books_.out(line.out);
        std::int64_t bars = 0;
        for (const Draw& draw : books_.draws(line)) {
            bars += draw.quantity;
            auto piece = std::ranges::find_if(out_[line.out], [&](const Piece& each) {
                return each.lot == draw.lot && each.quantity >= draw.quantity;
            });
            const Cost cost = piece->take(draw.quantity);
            if (line.trip == Trip::back) {
                come_back(out, line, draw, cost);
                continue;
            }
            const std::uint32_t source = books_.source(line.fact, line.material, draw.lot != kNoLot);
            books_.move(out, account(Boundary::sold), source, draw.quantity, cost);
            sold({draw.lot, draw.quantity, cost});
        }
        if (line.trip == Trip::back || bars == 0) continue;
        books_.ledger().sold.push_back({ref(fact), books_.day(), line.material, bars, from->price});
        try {
            const Money kept = fees_of(*from, bars).share;
            books_.enter(Boundary::bills, account(Boundary::selling), ref(fact), running(kept));
        } catch (const Overflow&) {
            books_.find(FindingCode::too_large, ref(fact));
        }
    }
}

// Back at the cost at which bars of the lot left as sold; spoiled ones go on from the lot at once.
void StallBook::post(const Returned& fact) {
    ReturnedLine returned{ref(fact), books_.day(), 0, 0, fact.refund};
    const StockLine* line = books_.line_of(ref(fact));
    if (line != nullptr) {
        returned.material = line->material;
        for (const Draw& draw : books_.draws(*line)) {
            const Cost cost = sold_of_.at(draw.lot).take(draw.quantity);
            returned.bars += draw.quantity;
            come_back(account(Boundary::sold), *line, draw, cost);
            if (line->trip != Trip::spoiled) continue;
            const std::uint32_t source = books_.source(line->fact, line->material, true);
            books_.leave(line->material, draw.lot, account(Boundary::lost), source, draw.quantity, cost);
        }
    }
    books_.ledger().returned.push_back(returned);
}

}  // namespace dyestead
