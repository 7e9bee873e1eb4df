#include "domain/ledger/allocate.h"

#include "domain/facts/lines_of.h"
#include "domain/ledger/holds.h"
#include "domain/ledger/lots_on_shelf.h"

namespace dyestead {
namespace {

// What went into what, line by line as it is allocated.
class Follower {
public:
    Follower(const Shop& shop, Holds& holds) : shop_{shop}, holds_{holds}, joined_{shop} {
        for (const Batch& batch : shop.all<Batch>())
            if (batch.split_from)
                if (const Batch* from = shop.find(*batch.split_from); from != nullptr && from->date <= batch.date)
                    holds_.went_into(at(plan_.batches, *from), at(plan_.batches, batch), batch.date);
    }

    void follow(const StockLine& line, std::span<const Draw> draws) {
        if (line.comes_in) return made(line);
        const auto into = used_in(line.fact);
        if (!into) return;
        for (const Draw& draw : draws)
            if (draw.lot != kNoLot) holds_.went_into(plan_.lots + draw.lot, *into, line.day);
    }

private:
    template <class Fact>
    Account at(Account first, const Fact& fact) const {
        return first + static_cast<Account>(&fact - shop_.all<Fact>().data());
    }
    template <class Use>
    const auto* head_of(FactRef fact) const {
        return shop_.find(shop_.find(Key<Use>{fact.key})->head);
    }

    std::optional<Account> used_in(FactRef fact) const {
        if (fact.kind == kKindOf<BatchUse>) return at(plan_.batches, *head_of<BatchUse>(fact));
        if (fact.kind == kKindOf<VatUse>) return at(plan_.vats, *head_of<VatUse>(fact));
        if (fact.kind != kKindOf<WrappingUse>) return std::nullopt;
        const Lot* wrapped = shop_.find(head_of<WrappingUse>(fact)->lot);
        return wrapped == nullptr ? std::nullopt : std::optional{at(plan_.lots, *wrapped)};
    }

    void made(const StockLine& line) {
        const Account lot = plan_.lots + line.lot;
        if (line.fact.kind == kKindOf<Cut>) {
            const Batch* batch = shop_.find(shop_.find(Key<Cut>{line.fact.key})->batch);
            if (batch != nullptr) holds_.went_into(at(plan_.batches, *batch), lot, line.day);
        }
        Key<Drying> drying{line.fact.kind == kKindOf<Drying> ? line.fact.key : 0};
        if (line.fact.kind == kKindOf<DryingLot>) drying = shop_.find(Key<DryingLot>{line.fact.key})->head;
        for (const DryingVat* joined : joined_(drying))
            if (const Vat* vat = shop_.find(joined->vat)) holds_.went_into(at(plan_.vats, *vat), lot, line.day);
    }

    const Shop& shop_;
    Holds& holds_;
    AccountPlan plan_ = account_plan(shop_);
    LinesOf<DryingVat> joined_;
};

}  // namespace

Stock allocate(const Shop& shop, const ShopLines& lines, std::span<const Event> events) {
    Stock stock = stock_lines(shop, lines, events);
    std::vector<LotOnShelf> lots(shop.all<Lot>().size());
    Holds holds{shop};
    std::vector<LotsOnShelf> shelves(shop.all<Material>().size(), LotsOnShelf{shop, stock, lots, holds});
    Follower follower{shop, holds};
    const auto mark = [&] {
        stock.first_draw.push_back(static_cast<std::uint32_t>(stock.draws.size()));
        stock.first_settlement.push_back(static_cast<std::uint32_t>(stock.settlements.size()));
    };
    stock.draws.reserve(stock.lines.size());
    stock.first_draw.reserve(stock.lines.size() + 1);
    stock.first_settlement.reserve(stock.lines.size() + 1);
    for (std::uint32_t line = 0; line < stock.lines.size(); ++line) {
        mark();
        if (stock.lines[line].left_out) continue;
        shelves[stock.lines[line].material].post(line);
        if (!holds.none()) follower.follow(stock.lines[line], std::span{stock.draws}.subspan(stock.first_draw[line]));
    }
    mark();
    return stock;
}

}  // namespace dyestead
