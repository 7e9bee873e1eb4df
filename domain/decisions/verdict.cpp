#include "domain/decisions/verdict.h"

#include <set>

#include "domain/decisions/hourly_target.h"
#include "domain/decisions/memory.h"
#include "domain/decisions/seasons.h"
#include "domain/decisions/soap_hour.h"
#include "domain/decisions/stands_on.h"
#include "domain/decisions/todays_prices.h"
#include "domain/decisions/verdict_findings.h"
#include "domain/ledger/in_force.h"
#include "domain/ledger/replay.h"

namespace dyestead {
namespace {

// Plantings of the colour that gave a harvest in those days.
int plantings_cut(const Records& records, Key<Colour> colour, Window window) {
    std::set<Key<Planting>> cut;
    for (const Harvest& harvest : records.shop.all<Harvest>()) {
        const Planting* planting = records.shop.find(harvest.planting);
        if (planting != nullptr && window.contains(harvest.date) && is_of_colour(records.shop, *planting, colour))
            cut.insert(planting->key);
    }
    return static_cast<int>(cut.size());
}

// W: what the dye hours were to bring, all people together. Where no hour was worked, what the hour
// of the person who works by default is to bring.
std::optional<double> blended_target(const Records& records, const PigmentPool& pool) {
    const Cost all = pool.all();
    if (all.hands_on > Minutes{} && all.labour > Money{}) return number(all.labour) / (number(all.hands_on) / 60);
    const auto target = hourly_target(records.shop, records.ledger.as_of);
    // Hours that brought no labour into the books were worked at nought, or before a target was set.
    if (all.hands_on > Minutes{} && target && *target != 0) return std::nullopt;
    return target;
}

// Of the standard, in grams for one loaf: home's dose, else the bought-in one's.
std::optional<double> dose_per_loaf(const Shop& shop, Key<Recipe> recipe, Key<Colour> colour) {
    for (const Colouring colouring : {Colouring::own, Colouring::bought}) {
        const RecipeColouring* line = colouring_of(shop, recipe, colouring, colour);
        if (line != nullptr && line->dose && line->dose->quantity.kind() == Kind::mass &&
            !line->dose->quantity.is_zero())
            return static_cast<double>(line->dose->quantity.in_base()) / 1e3;
    }
    return std::nullopt;
}

// A gram of the powder itself, as customers pay it.
std::optional<double> powder_price(const Shop& shop, Key<Colour> colour, Day day) {
    const PowderPrice* price = powder_price_in_force(shop, colour, day);
    if (price == nullptr || price->pack.quantity.kind() != Kind::mass || price->pack.quantity.is_zero())
        return std::nullopt;
    return number(price->price) / (static_cast<double>(price->pack.quantity.in_base()) / 1e3);
}

MissingRecord missing_first(const Gathered& gathered, const VerdictFigures& figures, const StandsOn& on) {
    if (gathered.pool.grams() <= 0 || gathered.pool.kg <= 0) return MissingRecord::dried_vat;
    if (!gathered.colour->bought_match) return MissingRecord::bought_match;
    if (!figures.pigment.strength) return MissingRecord::shade_test;
    if (on.harvest_years < 2) return MissingRecord::second_season;
    if (!gathered.dose_per_bar) return MissingRecord::base_recipe;
    if (!figures.model) return MissingRecord::price;
    return MissingRecord::none;
}

Ruling ruling(const Gathered& gathered, const VerdictFigures& figures, const StandsOn& on,
              const std::vector<SeasonRow>& rows, const Doubt& doubt) {
    RulingInput input;
    input.missing = missing_first(gathered, figures, on);
    input.hurdle = gathered.hurdle();
    if (input.missing != MissingRecord::none || !input.hurdle) return rule(input);
    const double hour = *input.hurdle;
    if (figures.home_less_plain) input.home_less_plain = figures.home_less_plain->full(hour);
    if (figures.bought_less_plain) input.bought_less_plain = figures.bought_less_plain->full(hour);
    input.usual.with_premium = figures.home_less_bought->full(hour);
    input.usual.without_premium = input.usual.with_premium - figures.model->kept_share() * figures.model->premium();
    input.bad = worst(rows);
    input.good = best(rows);
    if (doubt.kind == DoubtKind::chance && doubt.at_hurdle && doubt.at_hurdle_no_premium) {
        input.bad = {doubt.at_hurdle->bad, doubt.at_hurdle_no_premium->bad};
        input.good = {doubt.at_hurdle->good, doubt.at_hurdle_no_premium->good};
    }
    return rule(input);
}

// What is put down for a plant of the colour; of several, the first that says it.
std::optional<Band> stated_strength(const Shop& shop, Key<Colour> colour) {
    for (const Plant& plant : shop.all<Plant>())
        if (plant.colour == colour && plant.strength_low && plant.strength_usual && plant.strength_high)
            return Band{number(*plant.strength_low), number(*plant.strength_usual), number(*plant.strength_high)};
    return std::nullopt;
}

// What a season to come is drawn from. Requires: a model.
DoubtInput doubt_input(const Records& records, const Gathered& gathered, const Verdict& verdict) {
    DoubtInput input;
    input.model = *verdict.figures.model;
    input.plain_price_known = gathered.prices.plain.price.has_value();
    input.crop_can_fail = verdict.ahead != Stand::leaf_standing;
    input.target = gathered.target;
    input.hurdle = gathered.hurdle();
    input.cash_margin = verdict.figures.home.cash_margin_per_bar;
    input.full_margin = verdict.figures.home.full_margin_per_bar;
    input.strength_stated = stated_strength(records.shop, gathered.colour->key);
    for (const VatRow& vat : verdict.vats)
        input.vats.push_back({vat.season, vat.kg, vat.grams, vat.hours * 60, vat.strength});
    const PigmentPool& pool = gathered.pool;
    input.plantings_lost = static_cast<int>(pool.plantings_lost.size());
    input.plantings = input.plantings_lost + plantings_cut(records, gathered.colour->key, verdict.window);
    input.garden_cash_of_lost = number(pool.never_cut.cash()) / pool.kg;
    input.garden_minutes_of_lost = number(pool.never_cut.hands_on) / pool.kg;
    return input;
}

// What each vat took, over what the model takes for as much harvest.
std::vector<double> times_over_usual(std::vector<FinishedVat> vats, const Model& model) {
    std::ranges::stable_sort(vats, {}, [](const FinishedVat& vat) { return vat.vat->date; });
    std::vector<double> times;
    for (const FinishedVat& vat : vats) {
        const double usual = model.vat_minutes_fixed + model.vat_minutes_per_kg * vat.kg;
        times.push_back(usual > 0 ? number(vat.own.hands_on) / usual : 0);
    }
    return times;
}

std::vector<FinishedVat> dried_in(const std::vector<FinishedVat>& every_vat, Window window) {
    std::vector<FinishedVat> vats;
    for (const FinishedVat& vat : every_vat)
        if (window.contains(vat.dried)) vats.push_back(vat);
    return vats;
}

struct Look {
    int months = kVerdictMonths;
    int draws = kDraws;
    std::optional<Stand> ahead;
};

Verdict answer(const Records& records, Key<Colour> colour, const Look& look) {
    const auto& [months, draws, ahead] = look;
    const auto& [shop, ledger] = records;
    const Window year = months_to(ledger.as_of, 12);
    Verdict result;
    result.colour = colour;
    result.window = months_to(ledger.as_of, months);
    result.ahead = ahead;

    const auto every_vat = finished_vats(records, colour);
    if (every_vat.empty())
        if (const auto memory = memory_on_record(shop, colour, ledger.as_of))
            return verdict_from_memory(*memory, colour, ledger.as_of);
    const auto vats = dried_in(every_vat, result.window);
    Gathered gathered;
    gathered.colour = shop.find(colour);
    gathered.pool = pigment_pool(records, colour, vats, result.window);
    gathered.target = blended_target(records, gathered.pool);
    if (ahead) gathered.pool = still_to_spend(gathered.pool, *ahead);
    gathered.stand = ahead;
    gathered.sales_tax = number(sales_tax_in_force(shop, ledger.as_of));
    gathered.selling = selling(records, year);
    const SoapHour soap = soap_hour(records, gathered.selling, gathered.sales_tax, result.window, year);
    gathered.soap_hour = soap.earned;
    result.bought_match = gathered.colour->bought_match;
    if (result.bought_match) gathered.landed = landed_price(records, *result.bought_match, result.window);

    gathered.powder_price = powder_price(shop, colour, ledger.as_of);

    const BaseRecipe base = base_recipe(records, colour, result.window);
    if (base.recipe != nullptr) {
        result.base_recipe = base.recipe->key;
        gathered.base = base_loaf(records, *base.recipe, result.window);
        gathered.prices = shelf_prices(shop, base.recipe->key, colour, ledger.as_of);
        result.dose_per_loaf = dose_per_loaf(shop, base.recipe->key, colour);
        if (result.dose_per_loaf && gathered.base.good_bars > 0)
            gathered.dose_per_bar = *result.dose_per_loaf * gathered.base.loaves / gathered.base.good_bars;
        result.sold_at = sold_at(records, *base.recipe, colour, year);
    }
    result.base_bars = gathered.base.good_bars;
    result.dose_per_bar = gathered.dose_per_bar;
    result.bought_price_per_gram = gathered.landed.per_gram;
    result.hourly_target = gathered.target;
    result.fee_share = gathered.selling.fee_share;
    result.fee_per_bar = gathered.selling.fee_per_bar;
    result.sales_tax = gathered.sales_tax;

    const auto strength = strength_of(records, *gathered.colour, vats).known();
    result.figures = figures_at(gathered, strength.value_or(1), strength.has_value());
    if (!strength && gathered.pool.grams() > 0) result.if_weaker = figures_at(gathered, kIfWeaker, false);
    result.stands_on = stands_on(records, gathered, every_vat, vats, result.window);
    if (result.dose_per_loaf)
        result.stands_on.loaves_left = result.stands_on.grams_left * result.figures.strength / *result.dose_per_loaf;
    result.vats = vat_rows(records, *gathered.colour, vats);
    if (result.figures.model && ahead != Stand::pigment_dry)
        result.doubt = doubt(doubt_input(records, gathered, result), draws);
    if (result.figures.model)
        result.practice = practice(times_over_usual(every_vat, *result.figures.model), result.doubt.season_vats);
    result.seasons = seasons(records, gathered, every_vat, result.figures.strength);
    result.ruling = ruling(gathered, result.figures, result.stands_on, result.seasons, result.doubt);
    result.findings = verdict_findings(records, gathered, result, base, soap);
    return result;
}

}  // namespace

Verdict verdict(const Shop& shop, const Ledger& ledger, Key<Colour> colour, int months, int draws) {
    return answer({shop, ledger}, colour, {months, draws, std::nullopt});
}

Verdict look_ahead(const Shop& shop, Day as_of, Key<Colour> colour, Stand stand, int months, int draws) {
    const Shop today = at_prices_of(shop, as_of);
    const Ledger ledger = replay(today, as_of);
    return answer({today, ledger}, colour, {months, draws, stand});
}

}  // namespace dyestead
