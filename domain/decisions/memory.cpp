#include "domain/decisions/memory.h"

#include "domain/decisions/figures.h"

namespace dyestead {
namespace {

// Nothing is known of kilos: all a vat took stands for one, so that what depends on kilos alone has no meaning here.
Model model_of(const Memory& memory, double strength) {
    Model model;
    model.dose = memory.dose_grams * strength / memory.loaf_bars;
    model.strength = strength;
    model.yield = memory.powder_grams / memory.vats;
    model.kg_per_vat = 1;
    model.garden_cash_per_kg = memory.money_out / memory.vats;
    model.garden_minutes_per_kg = memory.garden_minutes / memory.vats;
    model.vat_minutes_fixed = memory.minutes_per_vat;
    model.hourly_target = memory.hour.value_or(0);
    model.bought_price_per_gram = memory.bought_per_gram;
    model.plain_price = *memory.plain_price;
    model.bought_price = memory.bought_price.value_or(*memory.plain_price);
    model.home_price = memory.own_price.value_or(model.bought_price);
    return model;
}

// The same hue from the same grams of one's own powder: what is asked is the shade those grams give.
VerdictFigures figures_of(const Memory& memory, double strength) {
    VerdictFigures figures;
    figures.strength = strength;
    const Model model = model_of(memory, strength);
    figures.model = model;
    compare(figures, {.target = memory.hour, .hurdle = memory.hour, .plain_price_known = true, .stand = std::nullopt});
    for (Breakevens* all : {&figures.breakeven, &figures.breakeven_cash}) {
        all->yield_g_per_kg = {};
        all->harvest_kg_per_vat = {};
    }
    const double minutes = memory.garden_minutes + memory.vats * memory.minutes_per_vat;
    PigmentFigures& pigment = figures.pigment;
    pigment.cash_cost_per_gram = memory.money_out / memory.powder_grams;
    pigment.hands_on_minutes_per_gram = minutes / memory.powder_grams;
    if (memory.hour)
        pigment.full_cost_per_gram = (memory.money_out + *memory.hour * minutes / 60) / memory.powder_grams;
    if (memory.strength) pigment.strength = strength;
    SeasonFigures& season = figures.season;
    season.dye_hours = minutes / 60;
    season.bars = memory.powder_grams / memory.dose_grams * memory.loaf_bars;
    season.cash_difference = figures.home_less_bought->cash * *season.bars;
    if (memory.hour) season.full_difference = figures.home_less_bought->full(*memory.hour) * *season.bars;
    return figures;
}

// One season is all there is: it is the usual, the worst and the best.
Ruling ruling(const Memory& memory, const VerdictFigures& figures) {
    RulingInput input;
    if (!memory.strength) input.missing = MissingRecord::shade_test;
    input.hurdle = memory.hour;
    if (input.missing != MissingRecord::none || !memory.hour) return rule(input);
    input.home_less_plain = figures.home_less_plain->full(*memory.hour);
    input.bought_less_plain = figures.bought_less_plain->full(*memory.hour);
    input.usual.with_premium = figures.home_less_bought->full(*memory.hour);
    input.usual.without_premium = input.usual.with_premium - figures.model->kept_share() * figures.model->premium();
    input.bad = input.usual;
    input.good = input.usual;
    return rule(input);
}

}  // namespace

Verdict verdict_from_memory(const Memory& memory, Key<Colour> colour, Day as_of) {
    Verdict verdict;
    verdict.colour = colour;
    verdict.window = months_to(as_of, 12);
    verdict.from_memory = true;
    verdict.hourly_target = memory.hour;
    verdict.dose_per_loaf = memory.dose_grams * memory.strength.value_or(1);
    verdict.dose_per_bar = *verdict.dose_per_loaf / memory.loaf_bars;
    verdict.bought_price_per_gram = memory.bought_per_gram;
    verdict.figures = figures_of(memory, memory.strength.value_or(1));
    if (!memory.strength) verdict.if_weaker = figures_of(memory, kIfWeaker);
    verdict.ruling = ruling(memory, verdict.figures);
    return verdict;
}

}  // namespace dyestead
