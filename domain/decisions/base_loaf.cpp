#include "domain/decisions/base_loaf.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace dyestead {
namespace {

// The first cut of a batch by the ledger's day.
const Cut* cut_of(const Records& records, Key<Batch> batch) {
    const Cut* first = nullptr;
    for (const Cut& cut : records.shop.all<Cut>())
        if (cut.batch == batch && cut.date <= records.ledger.as_of &&
            (first == nullptr || std::pair{cut.date, cut.key} < std::pair{first->date, first->key}))
            first = &cut;
    return first;
}

int good_bars(const Cut& cut) {
    return std::max(0, cut.bars - cut.rejected);
}

// What a batch without colour would not have taken.
bool is_for_colour(const Records& records, const Movement& movement) {
    if (records.from<BatchUse>(movement) != nullptr) {
        const Material& material = records.material(movement);
        return material.kind == MaterialKind::pigment || material.purpose == Purpose::colourant;
    }
    const BatchTime* time = records.from<BatchTime>(movement);
    return time != nullptr && time->task == BenchTask::colour;
}

bool comes_after_the_cut(const Records& records, const Movement& movement) {
    // Time of a sitting, too, goes to the bars when their batch was cut by then.
    return movement.from == account(Boundary::overhead) || records.from<SittingAt>(movement) != nullptr ||
           records.from<Wrapping>(movement) != nullptr || records.from<WrappingUse>(movement) != nullptr;
}

struct BarsPoured {
    double own = 0;
    double bought = 0;
    double any = 0;
    auto rank() const { return std::tuple{own, bought, any}; }
};

BarsPoured bars_poured(const Records& records, const Recipe& recipe, Key<Colour> colour, Window days) {
    const auto* own = colouring_of(records.shop, recipe.key, Colouring::own, colour);
    const auto* bought = colouring_of(records.shop, recipe.key, Colouring::bought, colour);
    BarsPoured poured;
    if (own == nullptr && bought == nullptr) return poured;
    for (const Batch& batch : records.shop.all<Batch>()) {
        if (batch.recipe != recipe.key || !days.contains(batch.date)) continue;
        const Cut* cut = cut_of(records, batch.key);
        if (cut == nullptr) continue;
        const double good = good_bars(*cut);
        poured.any += good;
        if (own != nullptr && batch.bar == own->bar)
            poured.own += good;
        else if (bought != nullptr && batch.bar == bought->bar)
            poured.bought += good;
    }
    return poured;
}

}  // namespace

BaseLoaf base_loaf(const Records& records, const Recipe& recipe, Window days) {
    BaseLoaf base;
    std::set<Key<Batch>> batches;
    std::set<Key<Lot>> lots;
    for (const Batch& batch : records.shop.all<Batch>()) {
        if (batch.recipe != recipe.key || !days.contains(batch.date)) continue;
        const Cut* cut = cut_of(records, batch.key);
        if (cut == nullptr) continue;
        batches.insert(batch.key);
        lots.insert(cut->lot);
        base.loaves += batch.loaves;
        base.good_bars += good_bars(*cut);
    }
    // Of each batch, of any recipe: what it took without colour, less what was poured off into another.
    std::map<Key<Batch>, Cost> without_colour;
    for (const Movement& movement : records.ledger.movements) {
        if (records.kind(movement.to) == AccountKind::batch) {
            Cost& into = without_colour[records.batch(movement.to).key];
            if (records.kind(movement.from) == AccountKind::batch) {
                const Ratio share = records.batch(movement.to).split_share.value_or(Ratio{});
                Cost& from = without_colour[records.batch(movement.from).key];
                const Cost poured_off = share_of(from, share.top, share.bottom);
                from -= poured_off;
                into += poured_off;
            } else if (!is_for_colour(records, movement)) {
                into += movement.cost;
            }
        } else if (records.kind(movement.to) == AccountKind::lot) {
            if (lots.contains(records.lot(movement.to).key) && comes_after_the_cut(records, movement))
                base.cost += movement.cost;
        }
    }
    for (const Key<Batch> batch : batches) base.cost += without_colour[batch];
    for (const Wrapping& wrapping : records.shop.all<Wrapping>())
        if (wrapping.date <= records.ledger.as_of && lots.contains(wrapping.lot)) base.wrapped_bars += wrapping.bars;
    return base;
}

BaseRecipe base_recipe(const Records& records, Key<Colour> colour, Window days) {
    BaseRecipe best;
    BarsPoured most;
    for (const Recipe& recipe : records.shop.all<Recipe>()) {
        const BarsPoured poured = bars_poured(records, recipe, colour, days);
        if (poured.any <= 0) continue;
        const bool more = best.recipe == nullptr || poured.rank() > most.rank() ||
                          (poured.rank() == most.rank() && recipe.code < best.recipe->code);
        if (!more) continue;
        best = {&recipe, poured.own > 0 || poured.bought > 0};
        most = poured;
    }
    return best;
}

const RecipeColouring* colouring_of(const Shop& shop, Key<Recipe> recipe, Colouring colouring, Key<Colour> colour) {
    for (const RecipeColouring& each : shop.all<RecipeColouring>())
        if (each.head == recipe && each.colouring == colouring &&
            (colouring == Colouring::plain || each.colour == colour))
            return &each;
    return nullptr;
}

}  // namespace dyestead
