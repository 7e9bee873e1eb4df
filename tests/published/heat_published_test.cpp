// Heat for a pot of water. The specific heat of 4.186 J/(g K) is from memory and the figures below are
// arithmetic from it; the tariffs are published.
#include <doctest/doctest.h>

#include <array>

#include "domain/values/heat.h"
#include "domain/values/rate.h"

using namespace dyestead;

namespace {

constexpr Quantity bought(std::int64_t litres, Ratio efficiency) {
    return energy_to_heat(Quantity::microlitres(litres * 1'000'000), {150}, {750}, efficiency);
}

struct Row {
    std::int64_t litres;
    std::int64_t useful, electric, gas;  // hundredths of a kWh, at efficiency 1, 0.9, 0.45
};
constexpr std::array kRows{Row{10, 70, 78, 155}, Row{20, 140, 155, 310}, Row{50, 349, 388, 775}};

// Watt-hours to hundredths of a kilowatt-hour.
constexpr std::int64_t hundredths(Quantity energy) {
    return scaled(energy.in_base(), 1, 10);
}

}  // namespace

TEST_CASE("energy to warm 10, 20 and 50 litres by 60 kelvin") {
    for (const Row& row : kRows) {
        CAPTURE(row.litres);
        CHECK(hundredths(bought(row.litres, {1, 1})) == row.useful);
        CHECK(hundredths(bought(row.litres, {9, 10})) == row.electric);
        CHECK(hundredths(bought(row.litres, {45, 100})) == row.gas);
    }
}

// Source: the price cap for Great Britain, January to March 2026: electricity 27.69 p, gas 5.93 p a kWh.
TEST_CASE("ten litres cost about 21 p electric and 9 p by gas") {
    const Rate electricity{Money::millionths(276'900), Quantity::watt_hours(1'000)};
    const Rate gas{Money::millionths(59'300), Quantity::watt_hours(1'000)};
    const auto pence = [](Money money) { return scaled(money.in_millionths(), 1, 10'000); };
    CHECK(pence(electricity * bought(10, {9, 10})) == 21);
    CHECK(pence(gas * bought(10, {45, 100})) == 9);
}
