#include "domain/decisions/prices.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "domain/decisions/bar_prices.h"
#include "domain/decisions/base_loaf.h"
#include "domain/decisions/bundle_prices.h"
#include "domain/decisions/hourly_target.h"
#include "domain/decisions/price_for_shops.h"
#include "domain/decisions/selling.h"
#include "domain/decisions/verdict.h"
#include "domain/facts/material_amount.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/latest_price.h"

namespace dyestead {
namespace {

class PriceList {
public:
    PriceList(const Shop& shop, const Ledger& ledger, const PriceAim& aim)
        : records_{shop, ledger}, shop_{shop}, ledger_{ledger}, aim_{aim} {}

    Prices answer() {
        const Selling sold = selling(records_, months_to(ledger_.as_of, 12));
        result_.aim = aim_;
        result_.terms = {number(sales_tax_in_force(shop_, ledger_.as_of)), sold.fee_share, sold.fee_per_bar};
        result_.selling_minutes = sold.minutes_per_bar.value_or(0);
        result_.selling_cost = sold.cost_per_bar.value_or(0);
        result_.hourly_target = hourly_target(shop_, ledger_.as_of);
        result_.wholesale_terms = wholesale_terms(shop_, ledger_.as_of);
        for (const RecipeColouring& line : shop_.all<RecipeColouring>()) result_.bars.push_back(bar(line));
        std::ranges::sort(result_.bars, {}, [&](const BarPrice& each) {
            const Material* material = shop_.find(each.bar);
            return material == nullptr ? std::string{} : material->name;
        });
        result_.bundles = bundle_prices(records_, result_);
        return std::move(result_);
    }

private:
    BarPrice bar(const RecipeColouring& line) {
        BarPrice price;
        price.bar = line.bar;
        price.replacement = replacement(line, price);
        booked(price);
        if (const auto shelf = shelf_price_in_force(shop_, line.bar, ledger_.as_of)) price.shelf = number(*shelf);
        price.wholesale = price_for_shops(records_, price, result_.wholesale_terms);
        if (!price.replacement) return price;
        const BarCost& cost = *price.replacement;
        const PriceTerms& terms = result_.terms;
        price.floor = floor_price(terms, cost.materials);
        if (aim_.margin) price.for_margin = price_for_margin(terms, cost.full(), *aim_.margin);
        if (aim_.markup) price.for_markup = price_for_markup(terms, cost.full(), *aim_.markup);
        const double hours = (cost.minutes + result_.selling_minutes) / 60;
        const double spent = cost.without_labour() + result_.selling_cost;
        if (result_.hourly_target) price.for_hour = price_for_hour(terms, spent, hours, *result_.hourly_target);
        for (const auto& each : {price.for_margin, price.for_markup, price.for_hour})
            if (each) price.advised = std::max(price.advised.value_or(0), *each);
        if (price.advised) price.advised = up_to_point(*price.advised, aim_.price_step);
        if (!price.shelf) return price;
        price.margin = margin_at(terms, *price.shelf, cost.full());
        if (hours > 0) price.per_hour = (terms.kept(*price.shelf) - spent) / hours;
        price.under_aim = price.advised && *price.shelf < *price.advised - 1e-9;
        return price;
    }

    std::optional<BarCost> replacement(const RecipeColouring& line, BarPrice& price) {
        const LoafNeeds loaf = loaf_needs(records_, line.bar, 1);
        price.unsaid = loaf.unsaid;
        if (loaf.recipe == nullptr || loaf.recipe->bars_per_loaf <= 0) return std::nullopt;
        const BaseLoaf& base = base_of(*loaf.recipe);
        const double good = base.bars_a_loaf(*loaf.recipe);
        BarCost cost;
        for (const Need& need : loaf.needs) {
            if (need.colour && line.colouring == Colouring::own) continue;
            const auto rate = latest_price(shop_, need.material, ledger_.as_of);
            if (!rate) {
                price.without_price.push_back(need.material);
                continue;
            }
            const Material& material = *shop_.find(need.material);
            const double money = number(*rate * Quantity{kind_of(material.held_as), need.quantity}) / good;
            cost.materials += money;
            if (need.colour) cost.colour = money;
        }
        cost.minutes = base.good_bars > 0 ? number(base.cost.hands_on) / base.good_bars : 0;
        if (const Overhead* overhead = overhead_in_force(shop_, ledger_.as_of); overhead != nullptr)
            if (overhead->normal_bars > 0)
                cost.overhead =
                    number(overhead->per_year + wear_per_year(shop_, ledger_.as_of)) / overhead->normal_bars;
        if (line.colouring == Colouring::own) add_grown(line, loaf, good, cost, price);
        cost.labour = cost.minutes / 60 * result_.hourly_target.value_or(0);
        if (!price.without_price.empty() || !price.unsaid.empty()) return std::nullopt;
        return cost;
    }

    void add_grown(const RecipeColouring& line, const LoafNeeds& loaf, double good, BarCost& cost, BarPrice& price) {
        if (!line.colour || !line.dose) return;
        const PigmentFigures& grown = pigment(*line.colour);
        const auto need = std::ranges::find_if(loaf.needs, [](const Need& each) { return each.colour; });
        if (need == loaf.needs.end()) return;
        const double grams_a_bar = static_cast<double>(need->quantity) / 1e3 / good;
        if (grown.cash_cost_per_gram) {
            cost.colour = *grown.cash_cost_per_gram * grams_a_bar;
            cost.materials += cost.colour;
            cost.minutes += grown.hands_on_minutes_per_gram.value_or(0) * grams_a_bar;
        } else {
            price.without_price.push_back(need->material);
        }
        const Colour* colour = shop_.find(*line.colour);
        if (colour == nullptr || !colour->bought_match) return;
        const auto rate = latest_price(shop_, *colour->bought_match, ledger_.as_of);
        if (!rate) return;
        const double strength = colour->match_strength ? number(*colour->match_strength) : 1.0;
        if (!(strength > 0)) return;
        const auto milligrams =
            std::int64_t{std::llround(static_cast<double>(line.dose->quantity.in_base()) / strength)};
        price.colour_bought = number(*rate * Quantity{Kind::mass, milligrams}) / good;
    }

    const BaseLoaf& base_of(const Recipe& recipe) {
        const auto known = bases_.find(recipe.key);
        if (known != bases_.end()) return known->second;
        return bases_.emplace(recipe.key, base_loaf(records_, recipe, months_to(ledger_.as_of, kVerdictMonths)))
            .first->second;
    }

    const PigmentFigures& pigment(Key<Colour> colour) {
        const auto known = grown_.find(colour);
        if (known != grown_.end()) return known->second;
        return grown_.emplace(colour, verdict(shop_, ledger_, colour, kVerdictMonths, 0).figures.pigment).first->second;
    }

    void booked(BarPrice& price) const {
        const LotState* newest = nullptr;
        for (std::size_t i = 0; i < shop_.all<Lot>().size(); ++i) {
            const LotState& state = ledger_.lots[i];
            if (shop_.all<Lot>()[i].material != price.bar || !state.made || state.received <= 0) continue;
            if (newest == nullptr || *state.made >= *newest->made) newest = &state;
        }
        if (newest == nullptr) return;
        const double bars = static_cast<double>(newest->received) / 1e3;
        price.booked_without_labour = number(newest->cost_in.cash()) / bars;
        price.booked_full = number(newest->cost_in.full()) / bars;
    }

    const Records records_;
    const Shop& shop_;
    const Ledger& ledger_;
    const PriceAim& aim_;
    std::map<Key<Colour>, PigmentFigures> grown_;
    std::map<Key<Recipe>, BaseLoaf> bases_;
    Prices result_;
};

}  // namespace

PriceAim price_aim(const Shop& shop, Day day) {
    const PriceRule rule = price_rule_in_force(shop, day);
    PriceAim aim;
    if (rule.margin || rule.markup) {
        aim.margin_is_default = false;
        aim.margin = rule.margin ? std::optional{number(*rule.margin)} : std::nullopt;
        if (rule.markup) aim.markup = number(*rule.markup);
    }
    if (rule.price_step) aim.price_step = number(*rule.price_step);
    return aim;
}

Prices prices(const Shop& shop, const Ledger& ledger) {
    return prices(shop, ledger, price_aim(shop, ledger.as_of));
}

Prices prices(const Shop& shop, const Ledger& ledger, const PriceAim& aim) {
    return PriceList{shop, ledger, aim}.answer();
}

}  // namespace dyestead
