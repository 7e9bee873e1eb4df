// An invented verdict for the tests of its words and papers: the published worked example of the model
// (0.0895 g of the standard a bar, 2 g from a kilo, 5 kg and two hours a vat) with what is around it.
#pragma once

#include "domain/decisions/verdict.h"

namespace dyestead::reports {

inline Shop example_shop() {
    Shop shop;
    About about;
    about.key = {1};
    about.name = "Example";
    about.currency = "GBP";
    shop.all<About>().push_back(about);
    dyestead::Colour colour;
    colour.key = {2};
    colour.code = "blue";
    colour.name = "blue";
    shop.all<dyestead::Colour>().push_back(colour);
    Recipe recipe;
    recipe.key = {3};
    recipe.code = "olive-loaf";
    recipe.name = "Olive loaf";
    shop.all<Recipe>().push_back(recipe);
    Vat vat;
    vat.key = {4};
    vat.code = "vat-1";
    vat.date = day_of(2026, 7, 3);
    vat.colour = {2};
    shop.all<Vat>().push_back(vat);
    Plant plant;
    plant.key = {5};
    plant.name = "Japanese indigo";
    plant.colour = Key<dyestead::Colour>{2};
    plant.caution = Caution::invasive;
    shop.all<Plant>().push_back(plant);
    return shop;
}

inline Model example_model(double premium) {
    return {.dose = 1.7 / 19,
            .strength = 20.0 / 38,
            .yield = 2,
            .kg_per_vat = 5,
            .vat_cash_per_kg = 0.296,
            .garden_cash_per_kg = 0.56,
            .garden_minutes_per_kg = 19.2,
            .vat_minutes_fixed = 120,
            .hourly_target = 12.71,
            .bought_price_per_gram = 0.25,
            .home_price = 5.5 + premium,
            .bought_price = 5.5,
            .plain_price = 5};
}

inline Alternative example_bar(double price, double colour_cash, double colour_minutes, double hour) {
    Alternative bar;
    bar.shelf_price_per_bar = bar.price_per_bar = price;
    bar.fees_per_bar = 0.1;
    bar.materials_per_bar = 1.2 + colour_cash;
    bar.energy_per_bar = 0.05;
    bar.overhead_per_bar = 0.25;
    bar.cash_cost_per_bar = 1.5 + colour_cash;
    bar.hands_on_minutes_per_bar = 6 + colour_minutes;
    bar.labour_per_bar = *bar.hands_on_minutes_per_bar * hour / 60;
    bar.full_cost_per_bar = *bar.cash_cost_per_bar + *bar.labour_per_bar;
    bar.cash_margin_per_bar = price - 0.1 - *bar.cash_cost_per_bar;
    bar.full_margin_per_bar = *bar.cash_margin_per_bar - *bar.labour_per_bar;
    bar.earnings_per_hour = *bar.cash_margin_per_bar / *bar.hands_on_minutes_per_bar * 60;
    return bar;
}

inline VerdictFigures example_figures(const Model& model) {
    VerdictFigures all;
    all.strength = model.strength;
    all.model = model;
    all.premium = model.premium();
    all.home_less_bought = home_less_bought(model);
    all.home_less_plain = home_less_plain(model);
    all.bought_less_plain = bought_less_plain(model);
    all.home = example_bar(model.home_price, model.home_cash(), model.home_minutes(), model.hourly_target);
    all.bought = example_bar(model.bought_price, model.bought_cash(), 0, model.hourly_target);
    all.plain = example_bar(model.plain_price, 0, 0, model.hourly_target);
    all.pigment = {.full_cost_per_gram = model.home_full() / model.home_grams(),
                   .cash_cost_per_gram = model.home_cash() / model.home_grams(),
                   .hands_on_minutes_per_gram = model.home_minutes() / model.home_grams(),
                   .strength = model.strength,
                   .yield_g_per_kg = model.yield,
                   .harvest_kg_per_vat = model.kg_per_vat,
                   .hands_on_minutes_per_vat = model.minutes_per_vat()};
    all.extra_dye_hour = {
        .earned = all.home_less_bought->earned_per_hour(), .hurdle = model.hourly_target, .soap_hour = 9.4};
    all.breakeven = breakevens(model);
    all.breakeven_cash = cash_breakevens(model);
    all.full_difference_at_hurdle = all.home_less_bought->full(model.hourly_target);
    all.premium_at_hurdle = model.premium() - *all.full_difference_at_hurdle / model.kept_share();
    all.season = {.dye_hours = 18,
                  .bars = 118,
                  .cash_difference = all.home_less_bought->cash * 118,
                  .full_difference = *all.full_difference_at_hurdle * 118};
    return all;
}

inline Verdict example_verdict(RulingWord word, const Model& model) {
    Verdict verdict;
    verdict.colour = {2};
    verdict.window = {day_of(2024, 11, 1), day_of(2026, 10, 31)};
    verdict.base_recipe = Key<Recipe>{3};
    verdict.base_bars = 96;
    verdict.dose_per_loaf = 1.7;
    verdict.dose_per_bar = model.dose;
    verdict.bought_price_per_gram = model.bought_price_per_gram;
    verdict.hourly_target = model.hourly_target;
    verdict.figures = example_figures(model);
    verdict.ruling.word = word;
    verdict.stands_on.vats_finished = 8;
    verdict.stands_on.vats_failed = 2;
    verdict.stands_on.failed_hours = 7;
    verdict.stands_on.failed_cash = 9.4;
    verdict.stands_on.harvest_years = 2;
    verdict.stands_on.grams_dried = 50;
    verdict.stands_on.grams_used = 21;
    verdict.stands_on.grams_left = 29;
    verdict.stands_on.loaves_left = 7;
    verdict.stands_on.tested_share = 0.8;
    verdict.stands_on.best_g_per_kg = 3;
    verdict.vats.push_back({.vat = {4},
                            .begun = day_of(2026, 7, 3),
                            .dried = day_of(2026, 7, 10),
                            .season = 2026,
                            .kg = 5,
                            .grams = 10,
                            .g_per_kg = 2,
                            .full_cost_per_gram_booked = 3.6,
                            .cash_cost_per_gram_booked = 0.4,
                            .strength = 0.5,
                            .hours = 2});
    verdict.findings.push_back({VerdictFindingCode::allowed_not_asked, {kKindOf<dyestead::Colour>, 2}, {}});
    return verdict;
}

}  // namespace dyestead::reports
