#include "domain/decisions/shelf.h"

#include <algorithm>
#include <tuple>

namespace dyestead {
namespace {

// The cut that made a lot, the first on record.
const Cut* cut_into(const Records& records, Key<Lot> lot) {
    const Cut* first = nullptr;
    for (const Cut& cut : records.shop.all<Cut>())
        if (cut.lot == lot && cut.date <= records.ledger.as_of && (first == nullptr || cut.date < first->date))
            first = &cut;
    return first;
}

const Recipe* recipe_of(const Shop& shop, const Cut* cut) {
    const Batch* batch = cut == nullptr ? nullptr : shop.find(cut->batch);
    return batch == nullptr ? nullptr : shop.find(batch->recipe);
}

std::optional<WeightOnShelf> weight_of(const Records& records, Key<Lot> lot, const Recipe* recipe) {
    std::vector<const Weighing*> weighings;
    for (const Weighing& each : records.shop.all<Weighing>())
        if (each.lot == lot && each.date <= records.ledger.as_of && each.bars > 0 &&
            each.total.quantity.kind() == Kind::mass)
            weighings.push_back(&each);
    if (weighings.empty()) return std::nullopt;
    std::ranges::stable_sort(weighings, {}, &Weighing::date);
    const auto per_bar = [](const Weighing& each) { return Ratio{each.total.quantity.in_base(), each.bars}; };
    WeightOnShelf weight;
    weight.day = weighings.back()->date;
    weight.per_bar = per_bar(*weighings.back());
    const Ratio first = per_bar(*weighings.front());
    if (weighings.size() > 1 && first.top > 0) {
        // (first - last) / first over the common number of bars.
        const Wide was = static_cast<Wide>(first.top) * weight.per_bar.bottom;
        const Wide is = static_cast<Wide>(weight.per_bar.top) * first.bottom;
        weight.lost = Ratio{narrow(was - is), narrow(was)};
    }
    if (recipe != nullptr && recipe->declared_weight.quantity.kind() == Kind::mass &&
        !recipe->declared_weight.quantity.is_zero())
        weight.below_declared = weight.per_bar < Ratio{recipe->declared_weight.quantity.in_base(), 1};
    return weight;
}

std::optional<Day> best_before(const Cut* cut, const LotState& state, const Recipe* recipe) {
    if (cut != nullptr && cut->best_before) return cut->best_before;
    if (state.best_before) return state.best_before;
    if (cut == nullptr || recipe == nullptr || !recipe->best_days) return std::nullopt;
    return cut->date + Days{*recipe->best_days};
}

}  // namespace

std::int64_t Shelf::bars(BarState state) const {
    std::int64_t sum = 0;
    for (const ShelfLot& lot : lots)
        if (lot.state == state) sum += lot.bars;
    return sum;
}

Shelf shelf(const Records& records) {
    const Day day = records.ledger.as_of;
    const Holds held = holds(records.shop, records.ledger);
    Shelf result;
    for (std::uint32_t i = 0; i < records.ledger.lots.size(); ++i) {
        const LotState& state = records.ledger.lots[i];
        const Lot& lot = records.shop.all<Lot>()[i];
        const Material* material = records.shop.find(lot.material);
        if (state.left <= 0 || material == nullptr || material->kind != MaterialKind::bar) continue;
        const Cut* cut = cut_into(records, lot.key);
        const Recipe* recipe = recipe_of(records.shop, cut);
        ShelfLot line;
        line.lot = lot.key;
        line.bar = material->key;
        line.bars = state.left;
        if (cut != nullptr) line.cut = cut->date;
        line.ready = state.ready;
        line.best_before = best_before(cut, state, recipe);
        line.held = held.why(i, day);
        line.weight = weight_of(records, lot.key, recipe);
        const bool too_old = line.best_before && *line.best_before < day;
        line.state = line.held           ? BarState::held
                     : too_old           ? BarState::past_best
                     : state.ready > day ? BarState::in_cure
                                         : BarState::ready;
        result.lots.push_back(line);
    }
    std::ranges::sort(result.lots, {}, [](const ShelfLot& line) { return std::tuple{line.ready, line.lot}; });
    return result;
}

}  // namespace dyestead
