#include "domain/values/heat.h"

#include <doctest/doctest.h>

using namespace dyestead;

namespace {
constexpr Quantity kTenLitres = Quantity::microlitres(10'000'000);
constexpr Ratio kAll{1, 1};
}  // namespace

TEST_CASE("water that does not grow warmer takes no energy") {
    CHECK(energy_to_heat(kTenLitres, {200}, {200}, kAll).is_zero());
    CHECK(energy_to_heat(kTenLitres, {800}, {200}, kAll).is_zero());
    CHECK(energy_to_heat(Quantity::grams(0), {150}, {800}, kAll) == Quantity::watt_hours(0));
}

TEST_CASE("a litre of water is a kilogram") {
    CHECK(energy_to_heat(kTenLitres, {150}, {750}, {9, 10}) ==
          energy_to_heat(Quantity::grams(10'000), {150}, {750}, {9, 10}));
}

TEST_CASE("a poorer hob asks for more, in proportion") {
    // 3600 kg by 1 K is 4186 Wh of heat.
    const Quantity water = Quantity::grams(3'600'000);
    CHECK(energy_to_heat(water, {200}, {210}, kAll) == Quantity::watt_hours(4'186));
    CHECK(energy_to_heat(water, {200}, {210}, {1, 2}) == Quantity::watt_hours(8'372));
    CHECK(energy_to_heat(water, {-10}, {0}, {50, 100}) == Quantity::watt_hours(8'372));
}

TEST_CASE("heat is rounded half away from zero to the watt-hour") {
    // 1.8 kg by 0.1 K is 0.2093 Wh; with an efficiency of 4186 in 10000 just half a watt-hour.
    const Quantity water = Quantity::grams(1'800);
    CHECK(energy_to_heat(water, {200}, {201}, {4'186, 10'000}) == Quantity::watt_hours(1));
    CHECK(energy_to_heat(water, {200}, {201}, {4'187, 10'000}) == Quantity::watt_hours(0));
}

TEST_CASE("only a mass or a volume can be warmed") {
    CHECK_THROWS_AS(energy_to_heat(Quantity::pieces(1), {0}, {100}, kAll), KindsMixed);
    CHECK_THROWS_AS(energy_to_heat(Quantity::watt_hours(1), {0}, {100}, kAll), KindsMixed);
}

TEST_CASE("the most that can be stated is still reckoned, or refused, never wrapped round") {
    const Quantity most{Kind::volume, kLargestStatedBase};
    CHECK(energy_to_heat(most, {0}, {1'000}, kAll) == Quantity::watt_hours(116'277'778));
    CHECK_THROWS_AS(energy_to_heat(most, {-100'000}, {100'000}, {1, 100'000'000'000}), Overflow);
}
