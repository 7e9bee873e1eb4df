// unit.h - which units can be typed, and exactly how much of a base unit each one is.
// The unit typed is kept beside the quantity, so that an ounce comes back as an ounce.
// Exact by definition: the pound is 0.45359237 kg and the inch 25.4 mm (International Yard and Pound
// Agreement, 1959); the US gallon is 231 cubic inches, the UK gallon 4.54609 l.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

#include "domain/values/quantity.h"
#include "domain/values/ratio.h"

namespace dyestead {

enum class Unit : std::uint8_t {
    piece,
    mg,
    g,
    kg,
    oz,
    lb,
    ml,
    cl,
    l,
    tsp,
    tbsp,
    us_tsp,
    us_tbsp,
    us_fl_oz,
    us_cup,
    us_pt,
    us_gal,
    uk_fl_oz,
    uk_pt,
    uk_gal,
    cm2,
    m2,
    ft2,
    wh,
    kwh,
};

struct UnitInfo {
    Unit unit;
    std::string_view code;  // as typed and stored; blank for pieces
    Kind kind;
    Ratio base;  // base units in one of these
};

inline constexpr std::array<UnitInfo, 25> kUnits{{
    {Unit::piece, "", Kind::count, {1'000, 1}},
    {Unit::mg, "mg", Kind::mass, {1, 1}},
    {Unit::g, "g", Kind::mass, {1'000, 1}},
    {Unit::kg, "kg", Kind::mass, {1'000'000, 1}},
    {Unit::oz, "oz", Kind::mass, {28'349'523'125, 1'000'000}},
    {Unit::lb, "lb", Kind::mass, {45'359'237, 100}},
    {Unit::ml, "ml", Kind::volume, {1'000, 1}},
    {Unit::cl, "cl", Kind::volume, {10'000, 1}},
    {Unit::l, "l", Kind::volume, {1'000'000, 1}},
    {Unit::tsp, "tsp", Kind::volume, {5'000, 1}},
    {Unit::tbsp, "tbsp", Kind::volume, {15'000, 1}},
    {Unit::us_tsp, "us tsp", Kind::volume, {492'892'159'375, 100'000'000}},
    {Unit::us_tbsp, "us tbsp", Kind::volume, {1'478'676'478'125, 100'000'000}},
    {Unit::us_fl_oz, "us fl oz", Kind::volume, {295'735'295'625, 10'000'000}},
    {Unit::us_cup, "us cup", Kind::volume, {2'365'882'365, 10'000}},
    {Unit::us_pt, "us pt", Kind::volume, {473'176'473, 1'000}},
    {Unit::us_gal, "us gal", Kind::volume, {3'785'411'784, 1'000}},
    {Unit::uk_fl_oz, "uk fl oz", Kind::volume, {284'130'625, 10'000}},
    {Unit::uk_pt, "uk pt", Kind::volume, {56'826'125, 100}},
    {Unit::uk_gal, "uk gal", Kind::volume, {4'546'090, 1}},
    {Unit::cm2, "cm2", Kind::area, {1, 1}},
    {Unit::m2, "m2", Kind::area, {10'000, 1}},
    {Unit::ft2, "ft2", Kind::area, {9'290'304, 10'000}},
    {Unit::wh, "Wh", Kind::energy, {1, 1}},
    {Unit::kwh, "kWh", Kind::energy, {1'000, 1}},
}};

constexpr const UnitInfo& info(Unit unit) {
    return kUnits[static_cast<std::size_t>(unit)];
}

// How surely a quantity or a length of time is known.
enum class Mark : std::uint8_t { measured, about, from_method };

// A quantity as it was stated: how much, in which unit, how surely.
struct Amount {
    Quantity quantity;
    Unit unit = Unit::piece;
    Mark mark = Mark::measured;
    friend constexpr bool operator==(const Amount&, const Amount&) = default;
};

}  // namespace dyestead
