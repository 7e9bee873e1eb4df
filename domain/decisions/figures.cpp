#include "domain/decisions/figures.h"

#include <algorithm>

namespace dyestead {
namespace {

double number(const std::optional<Span>& span) {
    return span ? number(span->time) : 0;
}

// The parts of a cost that go to one bar.
struct PerBar {
    double materials = 0;
    double labour = 0;
    double energy = 0;
    double overhead = 0;
    double minutes = 0;

    friend PerBar operator+(const PerBar& a, const PerBar& b) {
        return {a.materials + b.materials, a.labour + b.labour, a.energy + b.energy, a.overhead + b.overhead,
                a.minutes + b.minutes};
    }
};

PerBar share(const Cost& cost, double part) {
    return {number(cost.materials) * part, number(cost.labour) * part, number(cost.energy) * part,
            number(cost.overhead) * part, number(cost.hands_on) * part};
}

Alternative alternative(const Gathered& gathered, std::optional<double> shelf, const std::optional<PerBar>& cost) {
    Alternative bar;
    const bool with_labour = gathered.target.has_value();
    if (shelf) {
        bar.shelf_price_per_bar = *shelf;
        bar.price_per_bar = *shelf / (1 + gathered.sales_tax);
        bar.fees_per_bar = gathered.selling.fees(*shelf);
    }
    bar.selling_cost_per_bar = gathered.selling.cost_per_bar;
    bar.selling_minutes_per_bar = gathered.selling.minutes_per_bar;
    if (!cost) return bar;
    bar.materials_per_bar = cost->materials;
    bar.energy_per_bar = cost->energy;
    bar.overhead_per_bar = cost->overhead;
    bar.cash_cost_per_bar = cost->materials + cost->energy + cost->overhead;
    bar.hands_on_minutes_per_bar = cost->minutes;
    if (with_labour) {
        bar.labour_per_bar = cost->labour;
        bar.full_cost_per_bar = *bar.cash_cost_per_bar + cost->labour;
    }
    if (!shelf) return bar;
    bar.cash_margin_per_bar = *bar.price_per_bar - *bar.fees_per_bar - *bar.cash_cost_per_bar;
    if (with_labour) bar.full_margin_per_bar = *bar.cash_margin_per_bar - cost->labour;
    if (cost->minutes > 0) bar.earnings_per_hour = *bar.cash_margin_per_bar / (cost->minutes / 60);
    if (!bar.selling_cost_per_bar || !bar.selling_minutes_per_bar) return bar;
    const double minutes = cost->minutes + *bar.selling_minutes_per_bar;
    if (minutes > 0)
        bar.earnings_per_hour_with_selling = (*bar.cash_margin_per_bar - *bar.selling_cost_per_bar) / (minutes / 60);
    return bar;
}

void alternatives(const Gathered& gathered, double strength, VerdictFigures& figures) {
    const PigmentPool& pool = gathered.pool;
    const Colour& colour = *gathered.colour;
    const double per_minute = gathered.target.value_or(0) / 60;
    std::optional<PerBar> plain;
    std::optional<PerBar> home;
    std::optional<PerBar> bought;
    if (gathered.base.good_bars > 0) plain = share(gathered.base.cost, 1 / gathered.base.good_bars);
    if (plain && gathered.dose_per_bar && pool.grams() > 0) {
        const double minutes = number(colour.own_minutes_per_bar);
        const double money = colour.own_cost_per_bar ? number(*colour.own_cost_per_bar) : 0;
        home = *plain + share(pool.all(), *gathered.dose_per_bar / strength / pool.grams()) +
               PerBar{money, per_minute * minutes, 0, 0, minutes};
    }
    if (plain && gathered.dose_per_bar && gathered.landed.per_gram) {
        const double minutes = number(colour.bought_minutes_per_bar);
        const double money = *gathered.dose_per_bar / match_strength(colour) * *gathered.landed.per_gram;
        bought = *plain + PerBar{money, per_minute * minutes, 0, 0, minutes};
    }
    figures.home = alternative(gathered, gathered.prices.own.price, home);
    if (colour.bought_match) figures.bought = alternative(gathered, gathered.prices.bought.price, bought);
    figures.plain = alternative(gathered, gathered.prices.plain.price, plain);
}

PigmentFigures pigment(const Gathered& gathered, double strength, bool tested) {
    const PigmentPool& pool = gathered.pool;
    PigmentFigures figures;
    if (pool.vats == 0) return figures;
    if (pool.grams() > 0) {
        figures.cash_cost_per_gram = number(pool.all().cash()) / pool.grams();
        if (gathered.target) figures.full_cost_per_gram = number(pool.all().full()) / pool.grams();
        figures.hands_on_minutes_per_gram = number(pool.all().hands_on) / pool.grams();
        if (tested) figures.strength = strength;
    }
    if (pool.kg > 0) figures.yield_g_per_kg = pool.grams() / pool.kg;
    figures.harvest_kg_per_vat = pool.kg / pool.vats;
    figures.hands_on_minutes_per_vat = number(pool.vat.hands_on) / pool.vats;
    return figures;
}

std::optional<double> an_hour(std::optional<double> a_gram, const PigmentFigures& pigment) {
    constexpr double kLeast = 0.1;  // minutes a gram: with less there is no hour to speak of
    const auto& minutes = pigment.hands_on_minutes_per_gram;
    if (!a_gram || !minutes || *minutes < kLeast) return std::nullopt;
    return *a_gram / *minutes * 60;
}

// The gram in soap: against the bar that would be poured if it were not, the better of bought-in and plain.
std::optional<PowderSold> powder_sold(const Gathered& gathered, const VerdictFigures& figures) {
    if (!gathered.powder_price) return std::nullopt;
    const double kept = 1 / (1 + gathered.sales_tax) - gathered.selling.fee_share;
    PowderSold powder;
    powder.price_per_gram = *gathered.powder_price;
    powder.brings_per_gram = kept * powder.price_per_gram;
    const auto& cost = figures.pigment.cash_cost_per_gram;
    if (!cost) return powder;
    powder.left_per_gram = powder.brings_per_gram - *cost;
    powder.left_per_dye_hour = an_hour(powder.left_per_gram, figures.pigment);
    const auto& home = figures.home.cash_margin_per_bar;
    const auto other = std::max(figures.bought.cash_margin_per_bar, figures.plain.cash_margin_per_bar);
    if (!home || !other || !gathered.dose_per_bar || *gathered.dose_per_bar <= 0) return powder;
    powder.soap_left_per_gram = (*home - *other) * figures.strength / *gathered.dose_per_bar;
    powder.soap_left_per_dye_hour = an_hour(powder.soap_left_per_gram, figures.pigment);
    if (kept > 0) powder.even_price_per_gram = (*powder.soap_left_per_gram + *cost) / kept;
    return powder;
}

SeasonFigures season(const Gathered& gathered, double strength, const std::optional<Difference>& bar) {
    const PigmentPool& pool = gathered.pool;
    SeasonFigures figures;
    if (pool.vats == 0) return figures;
    figures.dye_hours = number(pool.all().hands_on) / 60;
    if (gathered.dose_per_bar) figures.bars = pool.grams() * strength / *gathered.dose_per_bar;
    if (figures.bars && bar) {
        figures.cash_difference = bar->cash * *figures.bars;
        if (gathered.target) figures.full_difference = bar->full(*gathered.target) * *figures.bars;
    } else if (pool.grams() <= 0 && gathered.landed.per_gram) {
        // No powder, no bar: what went in is the whole difference.
        figures.cash_difference = -number(pool.all().cash());
        if (gathered.target) figures.full_difference = -number(pool.all().full());
    }
    return figures;
}

void without_target(Breakevens& all) {
    for (Breakeven* each : {&all.premium_per_bar, &all.yield_g_per_kg, &all.harvest_kg_per_vat,
                            &all.hands_on_minutes_per_vat, &all.bought_price_per_gram})
        *each = {std::nullopt, NoBreakeven::no_target};
}

// With the pigment dry there is no hour at bed or vat to earn anything, and no harvest to get more from.
void nothing_left_to_do(VerdictFigures& figures) {
    figures.extra_dye_hour.earned.reset();
    for (Breakevens* all : {&figures.breakeven, &figures.breakeven_cash})
        for (Breakeven* each :
             {&all->hourly_target, &all->yield_g_per_kg, &all->harvest_kg_per_vat, &all->hands_on_minutes_per_vat})
            *each = {std::nullopt, NoBreakeven::nothing_left_to_do};
}

}  // namespace

std::optional<double> Gathered::hurdle() const {
    if (target && soap_hour) return std::max(*target, *soap_hour);
    return target ? target : soap_hour;
}

std::optional<Model> model_of(const Gathered& gathered, const PigmentPool& pool, double strength) {
    const Colour& colour = *gathered.colour;
    if (!gathered.dose_per_bar || !gathered.landed.per_gram || !gathered.prices.own.price ||
        !gathered.prices.bought.price || pool.grams() <= 0 || pool.kg <= 0)
        return std::nullopt;
    Model model;
    model.dose = *gathered.dose_per_bar;
    model.strength = strength;
    model.bought_strength = match_strength(colour);
    model.yield = pool.grams() / pool.kg;
    model.kg_per_vat = pool.kg / pool.vats;
    model.vat_cash_fixed = pool.vat_cash_fixed / pool.vats;
    model.vat_cash_per_kg = (number(pool.vat.cash()) - pool.vat_cash_fixed) / pool.kg;
    model.garden_cash_per_kg = number(pool.garden.cash()) / pool.kg;
    model.garden_minutes_per_kg = number(pool.garden.hands_on) / pool.kg;
    model.vat_minutes_fixed = pool.vat_minutes_fixed / pool.vats;
    model.vat_minutes_per_kg = (number(pool.vat.hands_on) - pool.vat_minutes_fixed) / pool.kg;
    model.hourly_target = gathered.target.value_or(0);
    model.bought_price_per_gram = *gathered.landed.per_gram;
    model.home_price = *gathered.prices.own.price;
    model.bought_price = *gathered.prices.bought.price;
    model.plain_price = gathered.prices.plain.price.value_or(0);
    model.sales_tax = gathered.sales_tax;
    model.fee_share = gathered.selling.fee_share;
    model.bought_minutes_per_bar = number(colour.bought_minutes_per_bar);
    model.home_minutes_per_bar = number(colour.own_minutes_per_bar);
    model.home_cash_per_bar = colour.own_cost_per_bar ? number(*colour.own_cost_per_bar) : 0;
    return model;
}

void compare(VerdictFigures& figures, const CompareTerms& terms) {
    const Model& model = *figures.model;
    figures.premium = model.premium();
    figures.home_less_bought = home_less_bought(model);
    if (terms.plain_price_known) {
        figures.home_less_plain = home_less_plain(model);
        figures.bought_less_plain = bought_less_plain(model);
    }
    figures.extra_dye_hour.earned = figures.home_less_bought->earned_per_hour();
    figures.extra_dye_hour.hurdle = terms.hurdle;
    figures.breakeven = breakevens(model);
    figures.breakeven_cash = cash_breakevens(model);
    if (!terms.target) without_target(figures.breakeven);
    if (terms.stand == Stand::pigment_dry) nothing_left_to_do(figures);
    if (!terms.hurdle) return;
    const double at_hurdle = figures.home_less_bought->full(*terms.hurdle);
    figures.full_difference_at_hurdle = at_hurdle;
    if (model.kept_share() > 0) figures.premium_at_hurdle = model.premium() - at_hurdle / model.kept_share();
    if (terms.target)
        figures.hurdle_turns_it = (figures.home_less_bought->full(*terms.target) >= 0) != (at_hurdle >= 0);
}

VerdictFigures figures_at(const Gathered& gathered, double strength, bool tested) {
    VerdictFigures figures;
    figures.strength = strength;
    alternatives(gathered, strength, figures);
    figures.pigment = pigment(gathered, strength, tested);
    figures.powder = powder_sold(gathered, figures);
    figures.extra_dye_hour.hurdle = gathered.hurdle();
    figures.extra_dye_hour.soap_hour = gathered.soap_hour;
    figures.model = model_of(gathered, gathered.pool, strength);
    if (figures.model) {
        compare(figures, {.target = gathered.target,
                          .hurdle = gathered.hurdle(),
                          .plain_price_known = gathered.prices.plain.price.has_value(),
                          .stand = gathered.stand});
    }
    figures.season = season(gathered, strength, figures.home_less_bought);
    return figures;
}

}  // namespace dyestead
