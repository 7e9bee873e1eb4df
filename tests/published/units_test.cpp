// Units against the exact values that Debian's `units` 2.22 prints. They follow from the definitions
// 0.45359237 kg, 25.4 mm, 231 cubic inches and 4.54609 l, which are checked as well.
#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <string_view>

#include "domain/facts/material_amount.h"
#include "domain/text/amounts.h"
#include "domain/text/decimal.h"

using namespace dyestead;

namespace {

struct Published {
    std::string_view unit;
    std::string_view value;
    std::string_view in;
};

// Source: GNU units 2.22 as packaged by Debian 12.
constexpr std::array kPublished{
    Published{"lb", "453.59237", "g"},
    Published{"oz", "28.349523125", "g"},
    Published{"us fl oz", "29.5735295625", "ml"},
    Published{"uk fl oz", "28.4130625", "ml"},
    Published{"us tsp", "4.92892159375", "ml"},
    Published{"us tbsp", "14.78676478125", "ml"},
    Published{"us cup", "236.5882365", "ml"},
    Published{"us pt", "473.176473", "ml"},
    Published{"us gal", "3785.411784", "ml"},
    Published{"uk pt", "568.26125", "ml"},
    Published{"uk gal", "4546.09", "ml"},
    Published{"tsp", "5", "ml"},
    Published{"tbsp", "15", "ml"},
};

const UnitInfo& unit(std::string_view code) {
    const auto* found = std::ranges::find(kUnits, code, &UnitInfo::code);
    REQUIRE(found != kUnits.end());
    return *found;
}

// Is one of `unit` exactly `value` of `in`?
bool exactly(std::string_view code, std::string_view value, std::string_view in) {
    const auto read = read_decimal(value);
    REQUIRE(read);
    const Ratio one = unit(code).base;
    const Ratio other = unit(in).base;
    return static_cast<Wide>(one.top) * other.bottom * power_of_ten((*read).places) ==
           static_cast<Wide>((*read).digits) * other.top * one.bottom;
}

}  // namespace

TEST_CASE("each unit is exactly what `units` prints") {
    for (const Published& row : kPublished) {
        CAPTURE(row.unit);
        CHECK(exactly(row.unit, row.value, row.in));
        CHECK(unit(row.unit).kind == unit(row.in).kind);
    }
    CHECK_FALSE(exactly("lb", "453.5924", "g"));
}

TEST_CASE("a typed amount of each unit is the published value to the base unit") {
    CHECK((*read_amount("1 lb")).quantity == Quantity::milligrams(453'592));
    CHECK((*read_amount("100 lb")).quantity == Quantity::milligrams(45'359'237));
    CHECK((*read_amount("1 oz")).quantity == Quantity::milligrams(28'350));
    CHECK((*read_amount("1 us tsp")).quantity == Quantity::microlitres(4'929));
    CHECK((*read_amount("1 us gal")).quantity == Quantity::microlitres(3'785'412));
    CHECK((*read_amount("1 uk pt")).quantity == Quantity::microlitres(568'261));
    CHECK((*read_amount("1 uk gal")).quantity == Quantity::microlitres(4'546'090));
}

TEST_CASE("the gallon and the square foot follow from the inch of 25.4 mm") {
    // A cubic inch is 25.4^3 mm^3, and 231 of them are a US gallon; a mm^3 is a microlitre.
    const Ratio gallon = unit("us gal").base;
    CHECK(static_cast<Wide>(gallon.top) * 1'000 == static_cast<Wide>(231) * 254 * 254 * 254 * gallon.bottom);
    // A square foot is 30.48^2 cm^2 (the foot of 12 inches: from memory).
    const Ratio foot = unit("ft2").base;
    CHECK(static_cast<Wide>(foot.top) * 10'000 == static_cast<Wide>(3'048) * 3'048 * foot.bottom);
}

// Source: a wastewater-treatment design text: light soda ash 35 to 50, working value 41 lb/ft^3; dense
// 60 to 76, working value 63. Grams to a spoon: arithmetic from these with 0.45359237 kg and 28.316846592 l.
TEST_CASE("a spoon of soda ash weighs what its grade says") {
    const auto grams_in = [](std::int64_t pounds_per_cubic_foot, Unit spoon) {
        Material ash;
        ash.spoon_density = Ratio{pounds_per_cubic_foot * 453'592'370, 28'316'846'592};
        const auto text = std::string{"1 "} + std::string{info(spoon).code};
        const auto held = as_held(ash, *read_amount(text));
        REQUIRE(held);
        return static_cast<double>(held->in_base()) / 1'000;
    };
    const auto near = [](double expected) { return doctest::Approx(expected).epsilon(0.0055 / expected); };
    CHECK(grams_in(35, Unit::tsp) == near(2.80));
    CHECK(grams_in(41, Unit::tsp) == near(3.28));
    CHECK(grams_in(50, Unit::tsp) == near(4.00));
    CHECK(grams_in(60, Unit::tsp) == near(4.81));
    CHECK(grams_in(63, Unit::tsp) == near(5.05));
    CHECK(grams_in(76, Unit::tsp) == near(6.09));
    CHECK(grams_in(41, Unit::us_tsp) == near(3.24));
    CHECK(grams_in(63, Unit::us_tsp) == near(4.97));
    // A mix-up of the grades changes the spoon by about 54 %.
    CHECK(grams_in(63, Unit::tsp) / grams_in(41, Unit::tsp) == doctest::Approx(1.54).epsilon(0.003));
}

TEST_CASE("the grade of soda ash has to be said: without a density a spoon is no mass") {
    CHECK_FALSE(as_held(Material{}, *read_amount("1 tsp")));
}
