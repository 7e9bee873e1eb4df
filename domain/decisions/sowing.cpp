#include "domain/decisions/sowing.h"

#include <algorithm>
#include <set>

#include "domain/decisions/base_loaf.h"
#include "domain/decisions/dye_yield.h"
#include "domain/decisions/selling.h"
#include "domain/decisions/sowing_ground.h"
#include "domain/decisions/verdict.h"
#include "domain/ledger/holds.h"
#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

class ForColour {
public:
    ForColour(const Records& records, const Holds& held, const SowingTerms& terms, const Colour& colour)
        : records_{records}, shop_{records.shop}, held_{held}, terms_{terms}, colour_{colour} {}

    ColourSowing answer() {
        result_.colour = colour_.key;
        vats_ = finished_vats(records_, colour_.key);
        find_plant();
        bars_and_dose();
        dye();
        harvest();
        chain();
        if (plant_ != nullptr) {
            result_.days = sowing_days(records_, *plant_, vats_, cure_days_);
            if (!result_.days.sow_by) missing(SowingGap::no_sowing_day);
            result_.free_m2 =
                free_ground(records_, result_.days.sow_by.value_or(day_of(year_of(records_.ledger.as_of) + 1, 1, 1)));
            standing();
            seed();
        }
        compare();
        return std::move(result_);
    }

private:
    void missing(SowingGap gap) { result_.missing.push_back(gap); }

    void find_plant() {
        double most = 0;
        for (const Plant& plant : shop_.all<Plant>()) {
            if (plant.colour != colour_.key) continue;
            double kg = 0;
            for (const HarvestSeason& season : harvest_seasons(records_, plant)) kg += season.kg;
            if (plant_ != nullptr) result_.other_plants = true;
            if (plant_ != nullptr && kg <= most) continue;
            plant_ = &plant;
            most = kg;
        }
        if (plant_ == nullptr) return missing(SowingGap::no_plant);
        result_.plant = plant_->key;
    }

    // The bars of the own colour that were sold, and the dose of the standard in one, over all recipes.
    void bars_and_dose() {
        const Window year = months_to(records_.ledger.as_of, 12);
        double sold_in_all = 0;
        double shade = 0;
        double most = -1;
        double any_dose = 0;
        for (const RecipeColouring& line : shop_.all<RecipeColouring>()) {
            if (line.colouring != Colouring::own || line.colour != colour_.key) continue;
            const Recipe* recipe = shop_.find(line.head);
            if (recipe == nullptr) continue;
            const double sold = std::max(0.0, bars_sold(records_, line.bar, year));
            sold_in_all += sold;
            const auto grams = in_grams(line.dose);
            const auto dose = grams ? over(*grams, good_bars(*recipe)) : std::nullopt;
            if (!dose || *dose <= 0) continue;
            shade += sold * *dose;
            dosed_ += sold;
            if (sold <= most) continue;
            most = sold;
            any_dose = *dose;
            cure_days_ = recipe->cure_days;
        }
        if (dosed_ > 0)
            result_.dose = shade / dosed_;
        else if (any_dose > 0)
            result_.dose = any_dose;
        else
            missing(SowingGap::no_dose);
        const auto asked = terms_.bars.find(colour_.key);
        result_.bars = asked == terms_.bars.end() ? sold_in_all : std::max(0, asked->second);
        result_.bars_from = asked == terms_.bars.end() ? SowingFrom::sales : SowingFrom::asked;
        if (result_.bars <= 0) missing(SowingGap::no_bars);
    }

    double good_bars(const Recipe& recipe) const {
        return base_loaf(records_, recipe, months_to(records_.ledger.as_of, kVerdictMonths)).bars_a_loaf(recipe);
    }

    void dye() {
        DyeYield yield = dye_yield(records_, colour_, plant_, vats_);
        result_.powder_per_kg = yield.powder_per_kg;
        result_.strength = yield.strength;
        result_.shade_per_kg = yield.shade_per_kg;
        if (yield.powder_per_kg.from == SowingFrom::nothing) missing(SowingGap::no_yield);
        if (yield.powder_per_kg.from == SowingFrom::records && *yield.powder_per_kg.of.usual <= 0)
            missing(SowingGap::nothing_came);
        if (yield.strength.from != SowingFrom::records) missing(SowingGap::strength_untested);
    }

    void harvest() {
        if (plant_ == nullptr) return;
        SowingFigure& per_m2 = result_.kg_per_m2;
        double kg = 0;
        double m2 = 0;
        for (const HarvestSeason& season : harvest_seasons(records_, *plant_)) {
            ++per_m2.seasons;
            widen(per_m2.of, season.per_m2());
            kg += season.kg;
            m2 += season.m2;
        }
        if (m2 > 0) {
            per_m2.from = SowingFrom::records;
            per_m2.of.usual = kg / m2;
            if (kg <= 0) missing(SowingGap::nothing_grew);
            return;
        }
        const auto usual = in_grams(plant_->usual);
        if (!usual || *usual <= 0) return missing(SowingGap::no_harvest_figure);
        per_m2.from = SowingFrom::plant;
        per_m2.of = times({in_grams(plant_->low), usual, in_grams(plant_->high)}, 1e-3);
    }

    void chain() {
        if (!result_.dose || result_.bars <= 0) return;
        const YearRange shade = every_year(*result_.dose * result_.bars);
        result_.harvest = over(shade, result_.shade_per_kg.of);
        result_.powder = over(shade, result_.strength.of);
        result_.area = over(result_.harvest, result_.kg_per_m2.of);
    }

    void standing() {
        result_.standing = standing_harvest(records_, *plant_, vats_);
        if (!result_.dose || *result_.dose <= 0) return;
        result_.standing.bars =
            times(times(result_.kg_per_m2.of, result_.shade_per_kg.of), result_.standing.m2 / *result_.dose);
    }

    void seed() {
        const SeedUsed used = seed_used(records_, plant_->key);
        SeedNeed need;
        need.seed = used.seed;
        const Material* material = used.seed ? shop_.find(*used.seed) : nullptr;
        const double before = used.per_m2.value_or(0);
        if (plant_->seed_rate && plant_->seed_rate->quantity.in_base() > 0) {
            need.rate_from = SowingFrom::plant;
            need.kind = plant_->seed_rate->quantity.kind();
            need.per_m2 = static_cast<double>(plant_->seed_rate->quantity.in_base());
            supposed(need);
        } else if (material != nullptr && before > 0) {
            need.rate_from = SowingFrom::records;
            need.kind = kind_of(material->held_as);
            need.per_m2 = before;
        } else {
            return missing(SowingGap::no_seed_rate);
        }
        bool dead = false;
        if (material != nullptr) tried(*material, need, dead);
        need.of = times(result_.area, need.per_m2 / need.coming.value_or(1) * need.reserve);
        if (material != nullptr) {
            if (kind_of(material->held_as) == need.kind)
                need.usual_as_held = need.of.usual;
            else if (before > 0 && result_.area.usual)
                need.usual_as_held = *result_.area.usual * before;
            if (!dead) need.there = seed_there(*material);
            if (need.usual_as_held) need.to_buy = std::max(0.0, *need.usual_as_held - need.there);
        }
        result_.seed = need;
    }

    // As the maker set it, else the program's own. Nothing comes up, or more than all: then it says nothing.
    void supposed(SeedNeed& need) const {
        const SowingRule rule = sowing_rule_in_force(shop_, records_.ledger.as_of);
        const auto share = [](double value) { return value > 0 && value <= 1; };
        need.coming = share(terms_.germination) ? terms_.germination : 1;
        need.coming_from = SowingFrom::supposed;
        if (rule.germination && share(number(*rule.germination))) {
            need.coming = number(*rule.germination);
            need.coming_from = SowingFrom::setting;
        }
        need.reserve_from = rule.reserve ? SowingFrom::setting : SowingFrom::supposed;
        need.reserve = std::max(1.0, rule.reserve ? number(*rule.reserve) : terms_.reserve);
    }

    // All tries of seed that is still there, together.
    void tried(const Material& material, SeedNeed& need, bool& dead) {
        int laid_out = 0;
        int came_up = 0;
        for (const GerminationTry& each : shop_.all<GerminationTry>()) {
            const Lot* lot = shop_.find(each.lot);
            const LotState* state = records_.state(each.lot);
            if (lot == nullptr || lot->material != material.key || state == nullptr || state->left <= 0) continue;
            if (each.date > records_.ledger.as_of || each.tried <= 0) continue;
            laid_out += each.tried;
            came_up += std::clamp(each.came_up, 0, each.tried);
        }
        dead = laid_out > 0 && came_up == 0;
        if (dead) missing(SowingGap::seed_dead);
        if (came_up <= 0 || !need.coming) return;
        need.coming = static_cast<double>(came_up) / laid_out;
        need.coming_from = SowingFrom::records;
    }

    double seed_there(const Material& material) const {
        const Day day = result_.days.sow_by.value_or(records_.ledger.as_of);
        double base = 0;
        for (std::size_t i = 0; i < shop_.all<Lot>().size(); ++i) {
            const LotState& state = records_.ledger.lots[i];
            if (shop_.all<Lot>()[i].material != material.key || state.best_before.value_or(Day::max()) < day) continue;
            if (!held_.why(static_cast<std::uint32_t>(i), records_.ledger.as_of))
                base += static_cast<double>(state.left);
        }
        return base;
    }

    // What the powder there would colour, and what the ground brings beside buying in.
    void compare() {
        const Verdict now = verdict(shop_, records_.ledger, colour_.key, kVerdictMonths, 0);
        if (!result_.dose || *result_.dose <= 0) return;
        result_.bars_in_stock = powder_there() * result_.strength.of.usual.value_or(0) / *result_.dose;
        how_long();
        if (plant_ == nullptr || !now.figures.home_less_bought || !result_.area.usual || *result_.area.usual <= 0)
            return;
        const double seasons = std::max(1, plant_->years_to_first);
        result_.brings_per_m2 = now.figures.home_less_bought->cash * result_.bars / *result_.area.usual / seasons;
    }

    // Grams: what the vats gave, and what was here before them.
    double powder_there() const {
        std::set<Key<Lot>> lots;
        for (const FinishedVat& vat : vats_)
            for (const PowderLot& powder : vat.powder) lots.insert(powder.lot->key);
        double there = 0;
        for (std::size_t i = 0; i < shop_.all<Lot>().size(); ++i) {
            const Lot& lot = shop_.all<Lot>()[i];
            const Material* material = shop_.find(lot.material);
            if (material == nullptr || held_.why(static_cast<std::uint32_t>(i), records_.ledger.as_of)) continue;
            const bool of_colour = material->kind == MaterialKind::pigment && material->colour == colour_.key;
            if (of_colour || lots.contains(lot.key))
                there += std::max(0.0, grams(*material, records_.ledger.lots[i].left).value_or(0));
        }
        return there;
    }

    // How long the powder there lasts at the bars wanted, and whether the sowing can wait for the next.
    void how_long() {
        if (result_.bars <= 0) return;
        constexpr double kYear = 365;
        constexpr double kLongest = 10 * kYear;
        const Day today = records_.ledger.as_of;
        const double days = *result_.bars_in_stock / result_.bars * kYear;
        if (days < kLongest) result_.stock_lasts = today + Days{static_cast<int>(days)};
        const bool stands = result_.standing.m2 > 0 && result_.standing.powder_dry && result_.standing.bars.usual;
        const auto next = stands ? result_.standing.powder_dry : result_.days.powder_dry;
        if (next && result_.stock_lasts && *result_.stock_lasts < *next)
            result_.bars_without = static_cast<double>((*next - *result_.stock_lasts).count()) / kYear * result_.bars;
        if (!result_.days.powder_dry || result_.bars_without) return;
        const double with_standing = days + (stands ? *result_.standing.bars.usual / result_.bars * kYear : 0);
        result_.can_wait = with_standing >= static_cast<double>((*result_.days.powder_dry - today).count()) + kYear;
    }

    const Records& records_;
    const Shop& shop_;
    const Holds& held_;
    const SowingTerms& terms_;
    const Colour& colour_;
    const Plant* plant_ = nullptr;
    std::vector<FinishedVat> vats_;
    double dosed_ = 0;  // bars sold of recipes that state a dose
    std::optional<int> cure_days_;
    ColourSowing result_;
};

// Grown, or meant to be.
bool is_grown(const Shop& shop, Key<Colour> colour) {
    return std::ranges::any_of(shop.all<Plant>(), [&](const Plant& plant) { return plant.colour == colour; }) ||
           std::ranges::any_of(shop.all<RecipeColouring>(), [&](const RecipeColouring& line) {
               return line.colouring == Colouring::own && line.colour == colour;
           });
}

}  // namespace

Sowing sowing(const Shop& shop, const Ledger& ledger, const SowingTerms& terms) {
    const Records records{shop, ledger};
    const Holds held = holds(shop, ledger);
    Sowing result;
    result.bed_m2 = bed_ground(shop);
    for (const Colour& colour : shop.all<Colour>())
        if (is_grown(shop, colour.key) || terms.bars.contains(colour.key))
            result.colours.push_back(ForColour{records, held, terms, colour}.answer());
    std::ranges::stable_sort(
        result.colours, {}, [](const ColourSowing& each) { return each.days.sow_by.value_or(Day::max()); });
    share_ground(result);
    return result;
}

}  // namespace dyestead
