#include "domain/decisions/base_loaf.h"

#include <algorithm>
#include <tuple>
#include <vector>

#include "domain/facts/in_turn.h"

namespace dyestead {
namespace {

// The first cut of each batch by the ledger's day, by the batch's place in the shop; null: not cut yet.
std::vector<const Cut*> first_cuts(const Records& records) {
    const auto& batches = records.shop.all<Batch>();
    std::vector<const Cut*> first(batches.size());
    InTurn<Batch> batch_of{records.shop};
    for (const Cut& cut : records.shop.all<Cut>()) {
        const Batch* batch = cut.date <= records.ledger.as_of ? batch_of.find(cut.batch) : nullptr;
        if (batch == nullptr) continue;
        const Cut*& known = first[static_cast<std::size_t>(batch - batches.data())];
        if (known == nullptr || std::pair{cut.date, cut.key} < std::pair{known->date, known->key}) known = &cut;
    }
    return first;
}

// Whether a movement comes from a fact of this kind.
template <class Fact>
bool is_from(const Records& records, const Movement& movement) {
    return records.ledger.sources[movement.source].fact.kind == kKindOf<Fact>;
}

int good_bars(const Cut& cut) {
    return std::max(0, cut.bars - cut.rejected);
}

// What a batch without colour would not have taken.
bool is_for_colour(const Records& records, const Movement& movement) {
    if (is_from<BatchUse>(records, movement)) {
        const Material& material = records.material(movement);
        return material.kind == MaterialKind::pigment || material.purpose == Purpose::colourant;
    }
    const BatchTime* time = records.from<BatchTime>(movement);
    return time != nullptr && time->task == BenchTask::colour;
}

bool comes_after_the_cut(const Records& records, const Movement& movement) {
    // Time of a sitting, too, goes to the bars when their batch was cut by then.
    return movement.from == account(Boundary::overhead) || is_from<SittingAt>(records, movement) ||
           is_from<Wrapping>(records, movement) || is_from<WrappingUse>(records, movement);
}

// The day before which nothing went into these batches, nor into what they were poured off from.
Day first_poured(const Records& records, const std::vector<std::size_t>& batches) {
    constexpr int kLongest = 1'000;  // whoever is poured off from himself ends here
    Day first = records.ledger.as_of;
    for (const std::size_t place : batches) {
        const Batch* batch = &records.shop.all<Batch>()[place];
        for (int depth = 0; batch != nullptr && depth < kLongest; ++depth) {
            first = std::min(first, batch->date);
            batch = batch->split_from ? records.shop.find(*batch->split_from) : nullptr;
        }
    }
    return first;
}

struct BarsPoured {
    double own = 0;
    double bought = 0;
    double any = 0;
    auto rank() const { return std::tuple{own, bought, any}; }
};

BarsPoured bars_poured(const Records& records, const std::vector<const Cut*>& cuts, const Recipe& recipe,
                       Key<Colour> colour, Window days) {
    const auto* own = colouring_of(records.shop, recipe.key, Colouring::own, colour);
    const auto* bought = colouring_of(records.shop, recipe.key, Colouring::bought, colour);
    BarsPoured poured;
    if (own == nullptr && bought == nullptr) return poured;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        const Batch& batch = records.shop.all<Batch>()[i];
        const Cut* cut = cuts[i];
        if (cut == nullptr || batch.recipe != recipe.key || !days.contains(batch.date)) continue;
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
    const auto& all_batches = records.shop.all<Batch>();
    const std::vector<const Cut*> cuts = first_cuts(records);
    BaseLoaf base;
    std::vector<std::size_t> batches;  // by place
    std::vector<Key<Lot>> lots;
    std::vector<bool> counts(records.ledger.lots.size());  // by place
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        if (cuts[i] == nullptr || all_batches[i].recipe != recipe.key || !days.contains(all_batches[i].date)) continue;
        batches.push_back(i);
        lots.push_back(cuts[i]->lot);
        if (const LotState* state = records.state(cuts[i]->lot))
            counts[static_cast<std::size_t>(state - records.ledger.lots.data())] = true;
        base.loaves += all_batches[i].loaves;
        base.good_bars += good_bars(*cuts[i]);
    }
    // Of each batch, of any recipe: what it took without colour, less what was poured off into another.
    std::vector<Cost> without_colour(all_batches.size());
    const auto at = [&](Account batch) -> Cost& { return without_colour[records.ledger.accounts.index(batch)]; };
    for (const Movement& movement : records.movements_since(first_poured(records, batches))) {
        if (records.kind(movement.to) == AccountKind::batch) {
            Cost& into = at(movement.to);
            if (records.kind(movement.from) == AccountKind::batch) {
                const Ratio share = records.batch(movement.to).split_share.value_or(Ratio{});
                Cost& from = at(movement.from);
                const Cost poured_off = share_of(from, share.top, share.bottom);
                from -= poured_off;
                into += poured_off;
            } else if (!is_for_colour(records, movement)) {
                into += movement.cost;
            }
        } else if (records.kind(movement.to) == AccountKind::lot) {
            if (counts[records.ledger.accounts.index(movement.to)] && comes_after_the_cut(records, movement))
                base.cost += movement.cost;
        }
    }
    for (const std::size_t batch : batches) base.cost += without_colour[batch];
    std::ranges::sort(lots);
    for (const Wrapping& wrapping : records.shop.all<Wrapping>())
        if (wrapping.date <= records.ledger.as_of && std::ranges::binary_search(lots, wrapping.lot))
            base.wrapped_bars += wrapping.bars;
    return base;
}

BaseRecipe base_recipe(const Records& records, Key<Colour> colour, Window days) {
    BaseRecipe best;
    BarsPoured most;
    const std::vector<const Cut*> cuts = first_cuts(records);
    for (const Recipe& recipe : records.shop.all<Recipe>()) {
        const BarsPoured poured = bars_poured(records, cuts, recipe, colour, days);
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
