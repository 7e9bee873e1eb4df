#include "gui/models/trial.h"

#include <doctest/doctest.h>

namespace dyestead::gui {

namespace {

Alternative bar(double cash, double labour, double minutes, double shelf) {
    Alternative bar;
    bar.shelf_price_per_bar = shelf;
    bar.price_per_bar = shelf;
    bar.fees_per_bar = 0;
    bar.materials_per_bar = cash;
    bar.energy_per_bar = 0;
    bar.overhead_per_bar = 0;
    bar.cash_cost_per_bar = cash;
    bar.labour_per_bar = labour;
    bar.full_cost_per_bar = cash + labour;
    bar.hands_on_minutes_per_bar = minutes;
    bar.cash_margin_per_bar = shelf - cash;
    bar.full_margin_per_bar = shelf - cash - labour;
    return bar;
}

// A verdict whose figures are the model's own: a plain bar of 1.50 and 6 minutes, and the colour on top of it.
Verdict recorded(double premium) {
    Model model;
    model.dose = 1.7 / 19;
    model.strength = 20.0 / 38;
    model.yield = 2;
    model.kg_per_vat = 5;
    model.vat_cash_per_kg = 0.296;
    model.garden_cash_per_kg = 0.56;
    model.vat_minutes_fixed = 120;
    model.garden_minutes_per_kg = 19.2;
    model.hourly_target = 12.71;
    model.bought_price_per_gram = 0.25;
    model.bought_price = 5.5;
    model.home_price = 5.5 + premium;
    model.plain_price = 5;
    Verdict verdict;
    verdict.hourly_target = model.hourly_target;
    verdict.figures.model = model;
    const double minute = model.target_per_minute();
    verdict.figures.plain = bar(1.5, 6 * minute, 6, 5);
    verdict.figures.bought = bar(1.5 + model.bought_cash(), 6 * minute, 6, 5.5);
    verdict.figures.home =
        bar(1.5 + model.home_cash(), (6 + model.home_minutes()) * minute, 6 + model.home_minutes(), model.home_price);
    verdict.figures.extra_dye_hour.hurdle = model.hourly_target;
    verdict.figures.home_less_bought = home_less_bought(model);
    return verdict;
}

}  // namespace

TEST_CASE("trying what the records say changes nothing") {
    const Verdict verdict = recorded(0.5);
    const VerdictFigures tried = tried_figures(verdict, *verdict.figures.model);
    CHECK(*tried.home.full_margin_per_bar == doctest::Approx(*verdict.figures.home.full_margin_per_bar));
    CHECK(*tried.bought.full_cost_per_bar == doctest::Approx(*verdict.figures.bought.full_cost_per_bar));
    CHECK(*tried.plain.hands_on_minutes_per_bar == doctest::Approx(6));
}

TEST_CASE("what is tried shows the model's difference between home and bought-in, whatever dial is turned") {
    const Verdict verdict = recorded(0.5);
    Model tried = *verdict.figures.model;
    SUBCASE("price") {
        tried.home_price = 7;
    }
    SUBCASE("hour") {
        tried.hourly_target = 20;
    }
    SUBCASE("yield") {
        tried.yield = 3.3;
    }
    SUBCASE("leaf") {
        tried.kg_per_vat = 25;
    }
    SUBCASE("time") {
        tried.vat_minutes_fixed = 20;
    }
    SUBCASE("bought") {
        tried.bought_price_per_gram = 2;
    }
    const VerdictFigures figures = tried_figures(verdict, tried);
    const double difference = home_less_bought(tried).full(tried.hourly_target);
    CHECK(*figures.home.full_margin_per_bar - *figures.bought.full_margin_per_bar == doctest::Approx(difference));
    CHECK(*figures.full_difference_at_hurdle == doctest::Approx(difference));
    CHECK(*figures.home.full_cost_per_bar ==
          doctest::Approx(*figures.home.cash_cost_per_bar + *figures.home.labour_per_bar));
}

TEST_CASE("the headline of a trial begins with If and turns with the sign") {
    const Verdict verdict = recorded(0);
    Model tried = *verdict.figures.model;
    const std::string worse = tried_headline("blue", tried_figures(verdict, tried), "GBP");
    tried.home_price += 1;
    const std::string better = tried_headline("blue", tried_figures(verdict, tried), "GBP");
    CHECK(worse.starts_with("If "));
    CHECK(better.starts_with("If "));
    CHECK(worse != better);
    CHECK(worse.find("£0.83") != std::string::npos);   // D at premium 0 in the formulas' worked check
    CHECK(better.find("£0.17") != std::string::npos);  // and at 1.00
    CHECK(better.find("£12.71") != std::string::npos);
}

}  // namespace dyestead::gui
