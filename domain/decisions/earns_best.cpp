#include "domain/decisions/earns_best.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "domain/decisions/base_loaf.h"
#include "domain/decisions/can_make.h"
#include "domain/decisions/contribution.h"
#include "domain/decisions/selling.h"
#include "domain/decisions/verdict.h"
#include "domain/ledger/hours.h"

namespace dyestead {
namespace {

// A tenth of a kilogram or litre of what is weighed or poured, one of what is counted.
double step_of(const Material& material) {
    return material.held_as == HeldAs::count ? 1e3 : 1e5;
}

class Making {
public:
    Making(const Shop& shop, const Ledger& ledger, const EarnsBestTerms& terms)
        : records_{shop, ledger}, shop_{shop}, ledger_{ledger}, terms_{terms}, prices_{prices(shop, ledger)} {}

    EarnsBest answer() {
        result_.months = std::max(terms_.months, 1);
        result_.scarce = terms_.scarce;
        hours_there();
        count_bars();
        for (const BarPrice& price : prices_.bars) result_.bars.push_back(bar(price));
        rank();
        mix();
        return std::move(result_);
    }

private:
    void hours_there() {
        if (terms_.hours) {
            result_.hours = std::max(0.0, *terms_.hours);
            result_.hours_from = HoursFrom::asked;
            return;
        }
        Minutes bench;
        const Window year = months_to(ledger_.as_of, 12);
        for (const StageHours& line : hours(shop_, ledger_, {year.first, year.last}))
            if (line.stage == Stage::bench || line.stage == Stage::wrapping) bench += line.time;
        if (bench <= Minutes{}) return;
        result_.hours = number(bench) / 60 * result_.months / 12;
        result_.hours_from = HoursFrom::bench_records;
    }

    void count_bars() {
        for (std::size_t i = 0; i < ledger_.lots.size(); ++i)
            if (ledger_.lots[i].left > 0 && ledger_.lots[i].best_before.value_or(Day::max()) >= ledger_.as_of)
                on_shelf_[shop_.all<Lot>()[i].material] += static_cast<double>(ledger_.lots[i].left) / 1e3;
    }

    BarEarns bar(const BarPrice& price) {
        BarEarns result;
        result.bar = price.bar;
        result.sold_a_year = std::max(0.0, bars_sold(records_, price.bar, months_to(ledger_.as_of, 12)));
        result.on_shelf = on_shelf_[price.bar];
        CanMake& one = needs_.emplace(price.bar, can_make(records_, held_, price.bar, 1, ledger_.as_of)).first->second;
        const Recipe* recipe = one.loaf.recipe;
        if (recipe == nullptr || recipe->bars_per_loaf <= 0) return result;
        const auto [at, is_new] = bases_.try_emplace(recipe->key);
        if (is_new) at->second = base_loaf(records_, *recipe, months_to(ledger_.as_of, kVerdictMonths));
        const BaseLoaf& base = at->second;
        result.good_bars = base.bars_a_loaf(*recipe);
        if (base.known() && base.cost.hands_on > Minutes{})
            result.hours = number(base.cost.hands_on) / 60 / base.loaves;
        const double wanted = result.sold_a_year * result_.months / 12 - result.on_shelf;
        if (wanted > 0) result.wanted = static_cast<int>(std::min(1e4, std::ceil(wanted / result.good_bars - 1e-9)));
        result.no_price = !price.shelf;
        const bool own = one.loaf.colouring->colouring == Colouring::own;
        const auto cost = cost_of_a_bar(price, own);
        result.no_cost = !cost;
        if (!price.shelf || !cost) return result;
        const double kept = prices_.terms.kept(*price.shelf);
        result.brings = (kept - *cost) * result.good_bars;
        if (!result.hours) return result;
        const double selling_hours = prices_.selling_minutes / 60 * result.good_bars;
        const double after_selling = *result.brings - prices_.selling_cost * result.good_bars;
        result.per_hour = *result.brings / *result.hours;
        result.with_selling = after_selling / (*result.hours + selling_hours);
        if (own && price.replacement && price.replacement->minutes > 0)
            result.grown_again = (kept - price.replacement->materials) / (price.replacement->minutes / 60);
        return result;
    }

    // Materials of one good bar at today's prices; of home colour, all but the powder.
    static std::optional<double> cost_of_a_bar(const BarPrice& price, bool own) {
        if (!price.replacement) return std::nullopt;
        return price.replacement->materials - (own ? price.replacement->colour : 0);
    }

    double need(Key<Material> bar, Key<Material> material) const {
        for (const Ingredient& each : needs_.at(bar).ingredients)
            if (each.material == material) return static_cast<double>(each.needed);
        return 0;
    }

    void rank() {
        result_.scarce_there = terms_.scarce ? there(*terms_.scarce) : result_.hours.value_or(0);
        std::vector<ScarceUse> uses;
        for (BarEarns& each : result_.bars) {
            if (terms_.scarce)
                each.takes = need(each.bar, *terms_.scarce);
            else
                each.takes = each.hours;
            if (each.brings && each.takes && *each.takes > 0) each.per_scarce = *each.brings / *each.takes;
            const bool known = each.brings && each.takes;
            uses.push_back(
                {known ? *each.brings : 0, each.takes.value_or(0), known ? static_cast<double>(each.wanted) : 0.0});
        }
        const std::vector<double> alone = best_use(uses, result_.scarce_there);
        for (std::size_t i = 0; i < alone.size(); ++i) result_.bars[i].alone = alone[i];
        // What takes nothing of it comes before all else, what is not known last.
        std::ranges::stable_sort(result_.bars, [](const BarEarns& a, const BarEarns& b) {
            const auto order = [](const BarEarns& each) {
                if (each.per_scarce) return std::pair{1, -*each.per_scarce};
                return std::pair{each.brings && each.takes ? 0 : 2, 0.0};
            };
            return order(a) < order(b);
        });
    }

    // On the shelf, not past its date, not on hold. Of a material no bar takes: nothing.
    double there(Key<Material> material) const {
        for (const auto& [bar, one] : needs_)
            for (const Ingredient& each : one.ingredients)
                if (each.material == material) return static_cast<double>(each.there);
        return 0;
    }

    void mix() {
        std::vector<MixKind> kinds;
        for (const BarEarns& each : result_.bars)
            kinds.push_back({each.brings && each.hours ? *each.brings : 0, each.wanted});
        std::vector<MixLimit> all;
        std::vector<MixLimit> cannot_be_bought;
        const auto add = [&](ShelfLimit limit, auto takes) {
            MixLimit row{limit.there, {}, limit.step};
            for (const BarEarns& each : result_.bars) row.takes.push_back(takes(each));
            if (!limit.can_be_bought) cannot_be_bought.push_back(row);
            all.push_back(std::move(row));
            result_.limits.push_back(std::move(limit));
        };
        if (result_.hours)
            add({.material = std::nullopt, .can_be_bought = false, .there = *result_.hours, .step = 1, .use = {}},
                [](const BarEarns& each) { return each.hours.value_or(0); });
        for (const Material& material : shop_.all<Material>()) {
            if (std::ranges::none_of(
                    result_.bars, [&](const BarEarns& each) { return need(each.bar, material.key) > 0; }))
                continue;
            add({.material = material.key,
                 .can_be_bought = material.kind == MaterialKind::raw,
                 .there = there(material.key),
                 .step = step_of(material),
                 .use = {}},
                [&](const BarEarns& each) { return need(each.bar, material.key); });
        }
        const Mix found = best_mix(kinds, all);
        const Mix ordered = best_mix(kinds, cannot_be_bought);
        result_.brings = found.brings;
        result_.brings_if_ordered = ordered.brings;
        result_.proven = found.proven && ordered.proven;
        for (std::size_t i = 0; i < result_.bars.size(); ++i) {
            result_.bars[i].make = found.made[i];
            result_.bars[i].make_if_ordered = ordered.made[i];
        }
        for (std::size_t i = 0; i < result_.limits.size(); ++i) result_.limits[i].use = found.limits[i];
    }

    const Records records_;
    const Shop& shop_;
    const Ledger& ledger_;
    const EarnsBestTerms& terms_;
    const Prices prices_;
    const Holds held_ = holds(shop_, ledger_);
    std::map<Key<Material>, double> on_shelf_;  // bars
    std::map<Key<Material>, CanMake> needs_;    // of one loaf
    std::map<Key<Recipe>, BaseLoaf> bases_;
    EarnsBest result_;
};

}  // namespace

EarnsBest earns_best(const Shop& shop, const Ledger& ledger, const EarnsBestTerms& terms) {
    return Making{shop, ledger, terms}.answer();
}

}  // namespace dyestead
