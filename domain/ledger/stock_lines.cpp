#include <algorithm>
#include <set>

#include "domain/facts/in_turn.h"
#include "domain/facts/material_amount.h"
#include "domain/ledger/allocate.h"
#include "domain/text/amounts.h"

namespace dyestead {
namespace {

// Days; what is typed beyond it is as good as for ever.
constexpr int kLongestShelfLife = 100'000;

template <class Fact>
std::uint32_t place(const Shop& shop, Key<Fact> key) {
    const Fact* fact = shop.find(key);
    return fact == nullptr ? kNoLot : static_cast<std::uint32_t>(fact - shop.all<Fact>().data());
}

class Lister {
public:
    Lister(const Shop& shop, const ShopLines& lines, Stock& stock) : shop_{shop}, lines_{lines}, stock_{stock} {
        // As many as there can be, with both lines of what was settled with a shop.
        stock_.lines.reserve(count<AlreadyHere, DeliveryLine, PlantingUse, TendingUse, Harvest, SeedKept, VatUse,
                                   Drying, DryingLot, BatchUse, Cut, WrappingUse, FairLine, SaleLine, PowderLine,
                                   OutAtShop, OutSettled, OutSettled, Returned, Loss, CountLine>());
    }

    void add(const Event& event) {
        day_ = event.day;
        if (event.assumed) return;
        post<AlreadyHere>(event, [&](const AlreadyHere& fact) {
            comes_in(ref(fact), fact.lot, fact.amount, fact.date, fact.best_before);
        });
        post<Delivery>(event, [&](const Delivery& fact) {
            for (const DeliveryLine* line : lines_.delivered(fact))
                comes_in(ref(*line), line->lot, line->amount, fact.date, best_before(*line, fact.date));
        });
        post<Planting>(event, [&](const Planting& fact) { uses(lines_.sown, fact); });
        post<Tending>(event, [&](const Tending& fact) { uses(lines_.fed, fact); });
        post<Harvest>(
            event, [&](const Harvest& fact) { comes_in(ref(fact), fact.lot, fact.amount, fact.date, std::nullopt); });
        post<SeedKept>(
            event, [&](const SeedKept& fact) { comes_in(ref(fact), fact.lot, fact.amount, fact.date, std::nullopt); });
        post<Vat>(event, [&](const Vat& fact) { uses(lines_.steeped, fact); });
        post<Drying>(event, [&](const Drying& fact) {
            if (fact.lot && fact.amount && !fact.amount->quantity.is_zero())
                comes_in(ref(fact), *fact.lot, *fact.amount, fact.date, std::nullopt);
            for (const DryingLot* line : lines_.dried_further(fact))
                if (!line->amount.quantity.is_zero())
                    comes_in(ref(*line), line->lot, line->amount, fact.date, std::nullopt);
        });
        post<Batch>(event, [&](const Batch& fact) { uses(lines_.poured, fact); });
        post<Cut>(event, [&](const Cut& fact) {
            const int good = std::max(0, fact.bars - fact.rejected);
            comes_in(ref(fact), fact.lot, bars(good), fact.cured, std::nullopt);
        });
        post<Wrapping>(event, [&](const Wrapping& fact) { uses(lines_.wrapped, fact); });
        post<Fair>(event, [&](const Fair& fact) {
            for (const FairLine* line : lines_.taken(fact))
                goes_out(ref(*line), line->bar, line->lot, bars(std::max(0, line->taken - line->back)), true);
        });
        post<Sale>(event, [&](const Sale& fact) {
            for (const SaleLine* line : lines_.sold(fact))
                goes_out(ref(*line), line->bar, line->lot, bars(std::max(0, line->bars)), true);
            for (const PowderLine* line : lines_.powder(fact)) sells(*line);
        });
        post<OutAtShop>(event, [&](const OutAtShop& fact) {
            const std::size_t before = stock_.lines.size();
            went_out_.insert(fact.key);
            goes_out(ref(fact), fact.bar, fact.lot, bars(std::max(0, fact.bars)), true);
            if (stock_.lines.size() == before) return;
            stock_.lines.back().trip = Trip::out;
            stock_.lines.back().out = place(shop_, fact.key);
        });
        post<OutSettled>(event, [&](const OutSettled& fact) {
            if (!went_out_.contains(fact.out)) return find(FindingCode::settled_before_out, ref(fact), {});
            settles(fact, Trip::sold_there, fact.sold);
            settles(fact, Trip::back, fact.back);
        });
        post<Returned>(event, [&](const Returned& fact) {
            const Lot* lot = shop_.find(fact.lot);
            if (lot == nullptr) return;
            StockLine line = of(ref(fact));
            line.material = place(shop_, lot->material);
            line.lot = place(shop_, fact.lot);
            line.trip = fact.fit == Fit::spoiled ? Trip::spoiled : Trip::returned;
            keep(line, bars(std::max(0, fact.bars)));
        });
        post<Loss>(event, [&](const Loss& fact) { goes_out(ref(fact), fact.material, fact.lot, fact.amount, false); });
        post<Count>(event, [&](const Count& fact) { counts(fact); });
    }

private:
    template <class... Fact>
    std::size_t count() const {
        return (shop_.all<Fact>().size() + ...);
    }

    template <class Fact, class Post>
    void post(const Event& event, Post post) {
        if (event.kind == kKindOf<Fact>) post(shop_.all<Fact>()[event.index]);
    }

    static Amount bars(int count) { return {Quantity::pieces(count), Unit::piece, Mark::measured}; }

    StockLine of(FactRef fact) const {
        StockLine line;
        line.fact = fact;
        line.day = day_;
        return line;
    }

    template <class Of>
    void uses(const LinesOf<UseIn<Of>>& lines, const Of& fact) {
        for (const auto* line : lines(fact)) goes_out(ref(*line), line->material, line->lot, line->amount, false);
    }

    void comes_in(FactRef fact, Key<Lot> lot, const Amount& amount, Day ready, std::optional<Day> best_before) {
        const Lot* found = lots_.find(lot);
        if (found == nullptr) return;
        StockLine line = of(fact);
        line.material = place(shop_, found->material);
        line.lot = static_cast<std::uint32_t>(found - shop_.all<Lot>().data());
        line.comes_in = true;
        line.ready = ready;
        line.best_before = best_before;
        keep(line, amount);
    }

    void goes_out(FactRef fact, Key<Material> material, std::optional<Key<Lot>> lot, const Amount& amount, bool sale) {
        StockLine line = of(fact);
        line.material = place(shop_, material);
        line.lot = lot ? place(shop_, *lot) : kNoLot;
        line.for_sale = sale;
        if (line.material == kNoLot) return;
        if (line.lot != kNoLot && shop_.all<Lot>()[line.lot].material != material) {
            find(FindingCode::lot_of_another_material, fact,
                 {shop_.all<Lot>()[line.lot].code, shop_.all<Material>()[line.material].name});
            line.lot = kNoLot;
        }
        keep(line, amount);
    }

    // What was bought in, leaf or bars are not sold by weight as powder made here: such a line moves nothing.
    void sells(const PowderLine& line) {
        const Material* material = shop_.find(line.pigment);
        if (material == nullptr) return;
        if (material->kind != MaterialKind::pigment) return find(FindingCode::no_powder, ref(line), {material->name});
        goes_out(ref(line), line.pigment, line.lot, line.amount, true);
    }

    void settles(const OutSettled& fact, Trip trip, int count) {
        const OutAtShop& out = *shop_.find(fact.out);
        StockLine line = of(ref(fact));
        line.material = place(shop_, out.bar);
        line.trip = trip;
        line.out = place(shop_, out.key);
        keep(line, bars(std::max(0, count)));
    }

    std::optional<Day> best_before(const DeliveryLine& line, Day came) {
        if (line.best_before) return line.best_before;
        const Lot* lot = lots_.find(line.lot);
        const Material* material = lot == nullptr ? nullptr : shop_.find(lot->material);
        if (material == nullptr || !material->shelf_life_days) return std::nullopt;
        return came + Days{std::min(*material->shelf_life_days, kLongestShelfLife)};
    }

    // The first line of a lot, or of all of a material, stands.
    void counts(const Count& fact) {
        std::set<Key<Material>> all_of;
        std::set<Key<Material>> some_of;
        std::set<Key<Lot>> lots;
        for (const CountLine* line : lines_.counted(fact)) {
            if (!line->counted) continue;
            const Material* material = shop_.find(line->material);
            if (material == nullptr) continue;
            const bool again = all_of.contains(line->material) ||
                               (line->lot ? lots.contains(*line->lot) : some_of.contains(line->material));
            if (again) {
                find(FindingCode::counted_twice, ref(*line), {material->name});
                continue;
            }
            const Lot* lot = line->lot ? shop_.find(*line->lot) : nullptr;
            if (lot != nullptr && lot->material != line->material) {
                find(FindingCode::lot_of_another_material, ref(*line), {lot->code, material->name});
                continue;
            }
            (line->lot ? some_of : all_of).insert(line->material);
            if (line->lot) lots.insert(*line->lot);
            StockLine counted = of(ref(*line));
            counted.material = place(shop_, line->material);
            counted.lot = lot == nullptr ? kNoLot : place(shop_, *line->lot);
            counted.counted = true;
            keep(counted, *line->counted);
        }
    }

    void keep(StockLine line, const Amount& amount) {
        if (line.material == kNoLot) return;
        const Material& material = shop_.all<Material>()[line.material];
        try {
            const auto quantity = as_held(material, amount);
            if (!quantity) find(FindingCode::amount_not_convertible, line.fact, {print(amount), material.name});
            line.left_out = !quantity;
            line.quantity = quantity ? quantity->in_base() : 0;
        } catch (const Overflow&) {
            find(FindingCode::too_large, line.fact, {});
            line.left_out = true;
        }
        stock_.lines.push_back(line);
    }

    void find(FindingCode code, FactRef about, std::vector<std::string> args) {
        stock_.findings.push_back({code, about, day_, std::move(args)});
    }

    const Shop& shop_;
    const ShopLines& lines_;
    Stock& stock_;
    Day day_{};
    InTurn<Lot> lots_{shop_};
    std::set<Key<OutAtShop>> went_out_;
};

}  // namespace

Stock stock_lines(const Shop& shop, const ShopLines& lines, std::span<const Event> events) {
    Stock stock;
    Lister lister{shop, lines, stock};
    stock.first_line.reserve(events.size() + 1);
    for (const Event& event : events) {
        stock.first_line.push_back(static_cast<std::uint32_t>(stock.lines.size()));
        lister.add(event);
    }
    stock.first_line.push_back(static_cast<std::uint32_t>(stock.lines.size()));
    return stock;
}

}  // namespace dyestead
