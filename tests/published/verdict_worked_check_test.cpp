// A check worked out by hand beside the formulas (computed, not taken from a book): one bar's dose of
// 1.7 g over 19 good bars, home pigment at 20/38 of the strength of the bought-in.
#include <doctest/doctest.h>

#include <cmath>
#include <optional>

#include "domain/decisions/breakeven.h"

using namespace dyestead;

namespace {

Model worked(double premium) {
    Model m;
    m.dose = 1.7 / 19;
    m.strength = 20.0 / 38;
    m.bought_strength = 1;
    m.yield = 2;
    m.kg_per_vat = 5;
    m.vat_cash_per_kg = 0.296;
    m.garden_cash_per_kg = 0.56;
    m.garden_minutes_per_kg = 19.2;
    m.vat_minutes_fixed = 120;
    m.hourly_target = 12.71;
    m.bought_price_per_gram = 0.25;
    m.bought_price = 5;
    m.home_price = 5 + premium;
    return m;
}

// Within half a unit of the last place the table gives.
bool shown(std::optional<double> value, double table, double half_unit) {
    return value && std::abs(*value - table) <= half_unit * 1.0001;
}

struct Row {
    double premium, d, earned, yield;
    std::optional<double> kg;
    double minutes, bought, even_premium;
    double yield_unit, kg_unit, minutes_unit;
};

}  // namespace

TEST_CASE("worked check: what one bar's colour takes") {
    const Model m = worked(0);
    CHECK(shown(m.kg_per_bar(), 0.085, 0.0005));
    CHECK(shown(m.bars_per_vat(), 58.8, 0.05));
    CHECK(shown(m.home_cash(), 0.0728, 0.00005));
    CHECK(shown(m.home_minutes(), 3.672, 0.0005));
    CHECK(shown(m.home_full(), 0.8506, 0.00005));
    CHECK(shown(m.fixed_per_vat(), 0.4321, 0.00005));
    CHECK(shown(m.bought_cash(), 0.0224, 0.00005));
}

TEST_CASE("worked check: the six break-evens at four premiums") {
    const Row rows[] = {
        {0.00, -0.8282, -0.82, 76, std::nullopt, -110, 9.51, 0.8282, 0.5, 0, 0.5},
        {0.50, -0.3282, 7.35, 3.26, 20.8, 28.9, 3.92, 0.8282, 0.005, 0.05, 0.05},
        {0.80, -0.0282, 12.25, 2.07, 5.35, 112.2, 0.57, 0.8282, 0.005, 0.005, 0.05},
        {1.00, 0.1718, 15.52, 1.66, 3.58, 167.7, -1.67, 0.8282, 0.005, 0.005, 0.05},
    };
    for (const Row& row : rows) {
        CAPTURE(row.premium);
        const Model m = worked(row.premium);
        const Difference difference = home_less_bought(m);
        const Breakevens all = breakevens(m);
        CHECK(shown(difference.full(m.hourly_target), row.d, 0.00005));
        CHECK(shown(difference.earned_per_hour(), row.earned, 0.005));
        CHECK(all.hourly_target.value == difference.earned_per_hour());
        CHECK(shown(all.yield_g_per_kg.value, row.yield, row.yield_unit));
        CHECK(all.harvest_kg_per_vat.value.has_value() == row.kg.has_value());
        if (row.kg) CHECK(shown(all.harvest_kg_per_vat.value, *row.kg, row.kg_unit));
        CHECK(shown(all.hands_on_minutes_per_vat.value, row.minutes, row.minutes_unit));
        CHECK(shown(all.bought_price_per_gram.value, row.bought, 0.005));
        CHECK(shown(all.premium_per_bar.value, row.even_premium, 0.00005));
    }
}
