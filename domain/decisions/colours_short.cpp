#include "domain/decisions/colours_short.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "domain/decisions/base_loaf.h"
#include "domain/decisions/loaf_needs.h"
#include "domain/decisions/prices.h"
#include "domain/decisions/sowing_ground.h"
#include "domain/decisions/strength.h"
#include "domain/decisions/verdict.h"
#include "domain/ledger/latest_price.h"

namespace dyestead {
namespace {

// The colour that one plan takes.
struct ColourUse {
    const Plan* plan = nullptr;
    const LoafNeeds* loaves = nullptr;
    std::int64_t quantity = 0;
    std::int64_t a_loaf() const { return std::max<std::int64_t>(1, quantity / std::max(1, plan->loaves)); }
};

class Shortage {
public:
    Shortage(const Records& records, const Holds& held, const std::vector<const Plan*>& plans)
        : records_{records}, shop_{records.shop}, held_{held} {
        loaves_.reserve(plans.size());
        for (const Plan* plan : plans) {
            loaves_.push_back(loaf_needs(records, plan->bar, plan->loaves));
            for (const Need& need : loaves_.back().needs)
                if (need.colour && need.quantity > 0)
                    used_[need.material].push_back({plan, &loaves_.back(), need.quantity});
        }
    }

    std::vector<ColourShort> answer() {
        std::vector<ColourShort> all;
        for (const auto& [material, uses] : used_) {
            ColourShort each = of(material, uses);
            if (each.short_by > 0) all.push_back(std::move(each));
        }
        std::ranges::stable_sort(all, {}, &ColourShort::runs_out);
        return all;
    }

private:
    ColourShort of(Key<Material> material, const std::vector<ColourUse>& uses) {
        const RecipeColouring& line = *uses.front().loaves->colouring;
        ColourShort result;
        result.material = material;
        result.colour = *line.colour;
        result.own = line.colouring == Colouring::own;
        result.there = there(material);
        if (result.own && wanted(uses, std::nullopt) > result.there) result.next_powder = next_powder(*line.colour);
        std::int64_t left = result.there;
        for (const ColourUse& use : uses) {
            if (result.next_powder && use.plan->date >= *result.next_powder) continue;
            if (left >= 0 && left < use.quantity) result.runs_out = use.plan->date;
            left -= use.quantity;
        }
        result.short_by = std::max<std::int64_t>(0, -left);
        if (result.short_by <= 0) return result;
        buy(result, uses.front());
        pour_fewer(result, uses);
        return result;
    }

    static std::int64_t wanted(const std::vector<ColourUse>& uses, std::optional<Day> before) {
        std::int64_t sum = 0;
        for (const ColourUse& use : uses)
            if (!before || use.plan->date < *before) sum += use.quantity;
        return sum;
    }

    std::int64_t there(Key<Material> material) const {
        std::int64_t sum = 0;
        for (std::size_t i = 0; i < shop_.all<Lot>().size(); ++i) {
            const LotState& state = records_.ledger.lots[i];
            if (shop_.all<Lot>()[i].material != material || state.left <= 0) continue;
            if (state.best_before.value_or(Day::max()) < records_.ledger.as_of) continue;
            if (!held_.why(static_cast<std::uint32_t>(i), records_.ledger.as_of)) sum += state.left;
        }
        return sum;
    }

    // Of what stands now; of several plants the first that is ripe.
    std::optional<Day> next_powder(Key<Colour> colour) const {
        const auto vats = finished_vats(records_, colour);
        std::optional<Day> soonest;
        for (const Plant& plant : shop_.all<Plant>()) {
            if (plant.colour != colour) continue;
            const StandingHarvest standing = standing_harvest(records_, plant, vats);
            if (standing.m2 <= 0 || !standing.powder_dry || *standing.powder_dry < records_.ledger.as_of) continue;
            soonest = std::min(soonest.value_or(*standing.powder_dry), *standing.powder_dry);
        }
        return soonest;
    }

    void buy(ColourShort& result, const ColourUse& use) const {
        const Colour* colour = shop_.find(result.colour);
        result.buy_quantity = result.short_by;
        if (!result.own) {
            result.buy = result.material;
        } else if (colour != nullptr && colour->bought_match && match_strength(*colour) > 0) {
            result.buy = colour->bought_match;
            // The dose asks for so much of the standard; a loaf takes so much of the powder there.
            const auto dose = static_cast<double>(use.loaves->colouring->dose->quantity.in_base());
            const double powder = static_cast<double>(result.short_by) / static_cast<double>(use.a_loaf());
            result.buy_quantity = std::int64_t{std::llround(powder * dose / match_strength(*colour))};
        }
        const Material* material = result.buy ? shop_.find(*result.buy) : nullptr;
        if (material == nullptr) return;
        if (const auto rate = latest_price(shop_, material->key, records_.ledger.as_of))
            result.buy_cost = number(*rate * Quantity{kind_of(material->held_as), result.buy_quantity});
    }

    void pour_fewer(ColourShort& result, const std::vector<ColourUse>& uses) {
        std::int64_t over = result.short_by;
        for (auto use = uses.rbegin(); use != uses.rend() && over > 0; ++use) {
            if (result.next_powder && use->plan->date >= *result.next_powder) continue;
            const std::int64_t wanted = (over + use->a_loaf() - 1) / use->a_loaf();
            PourFewer fewer{use->plan->key, static_cast<int>(std::min<std::int64_t>(wanted, use->plan->loaves)), {}};
            over -= fewer.loaves * use->a_loaf();
            if (const auto bar = left_of_a_bar(use->plan->bar)) fewer.left = *bar * fewer.loaves * good_bars(*use);
            result.fewer.push_back(fewer);
        }
    }

    double good_bars(const ColourUse& use) const {
        const Recipe& recipe = *use.loaves->recipe;
        return base_loaf(records_, recipe, months_to(records_.ledger.as_of, kVerdictMonths)).bars_a_loaf(recipe);
    }

    std::optional<double> left_of_a_bar(Key<Material> bar) {
        if (!prices_) prices_ = prices(shop_, records_.ledger);
        const auto found = std::ranges::find(prices_->bars, bar, &BarPrice::bar);
        if (found == prices_->bars.end() || !found->shelf || !found->replacement) return std::nullopt;
        return prices_->terms.kept(*found->shelf) - found->replacement->without_labour() - prices_->selling_cost;
    }

    const Records& records_;
    const Shop& shop_;
    const Holds& held_;
    std::vector<LoafNeeds> loaves_;
    std::map<Key<Material>, std::vector<ColourUse>> used_;
    std::optional<Prices> prices_;  // asked for only where something is short
};

}  // namespace

int ColourShort::loaves() const {
    int all = 0;
    for (const PourFewer& each : fewer) all += each.loaves;
    return all;
}

std::optional<double> ColourShort::left() const {
    double all = 0;
    for (const PourFewer& each : fewer) {
        if (!each.left) return std::nullopt;
        all += *each.left;
    }
    return all;
}

std::vector<ColourShort> colours_short(const Records& records, const Holds& held,
                                       const std::vector<const Plan*>& plans) {
    return Shortage{records, held, plans}.answer();
}

}  // namespace dyestead
