// stated_amounts.h - which amounts does a fact state, and of what kind must each be?
// Either of one kind (a bed has an area), or an amount of a material, which must lead to the kind the
// material is held in (material_amount.h), or of the material of a lot.
#pragma once

#include <string_view>
#include <variant>
#include <vector>

#include "domain/facts/bench.h"
#include "domain/facts/garden.h"

namespace dyestead {

struct StatedAmount {
    std::string_view field;
    Amount amount;
    std::variant<Kind, Key<Material>, Key<Lot>> of;
};

using StatedAmounts = std::vector<StatedAmount>;

template <class Fact>
StatedAmounts stated_amounts(const Fact&) {
    return {};
}
template <class Of>
StatedAmounts stated_amounts(const UseIn<Of>& use) {
    return {{"amount", use.amount, use.material}};
}
inline StatedAmounts stated_amounts(const Offer& offer) {
    return {{"pack", offer.pack, offer.material}};
}
inline StatedAmounts stated_amounts(const AlreadyHere& here) {
    return {{"amount", here.amount, here.lot}};
}
inline StatedAmounts stated_amounts(const DeliveryLine& line) {
    return {{"amount", line.amount, line.lot}};
}
inline StatedAmounts stated_amounts(const Loss& loss) {
    return {{"amount", loss.amount, loss.material}};
}
inline StatedAmounts stated_amounts(const Bed& bed) {
    return {{"area", bed.area, Kind::area}};
}
inline StatedAmounts stated_amounts(const Plant& plant) {
    return {{"low", plant.low, Kind::mass}, {"usual", plant.usual, Kind::mass}, {"high", plant.high, Kind::mass}};
}
inline StatedAmounts stated_amounts(const Planting& planting) {
    StatedAmounts all;
    if (planting.area) all.push_back({"area", *planting.area, Kind::area});
    if (planting.expected) all.push_back({"expected", *planting.expected, Kind::mass});
    return all;
}
inline StatedAmounts stated_amounts(const ExpectedTotal& total) {
    return {{"amount", total.amount, Kind::mass}};
}
inline StatedAmounts stated_amounts(const Harvest& harvest) {
    return {{"amount", harvest.amount, harvest.lot}};
}
inline StatedAmounts stated_amounts(const VatHeat& heat) {
    StatedAmounts all;
    if (heat.energy) all.push_back({"energy", *heat.energy, Kind::energy});
    if (heat.water) all.push_back({"water", *heat.water, Kind::volume});
    return all;
}
inline StatedAmounts stated_amounts(const Drying& drying) {
    if (!drying.amount) return {};
    if (!drying.lot) return {{"amount", *drying.amount, Kind::mass}};
    return {{"amount", *drying.amount, *drying.lot}};
}
inline StatedAmounts stated_amounts(const Recipe& recipe) {
    return {{"declared_weight", recipe.declared_weight, Kind::mass}};
}
inline StatedAmounts stated_amounts(const RecipePart& part) {
    return {{"amount", part.amount, part.material}};
}
inline StatedAmounts stated_amounts(const RecipeWrapping& wrapping) {
    return {{"per_bar", wrapping.per_bar, wrapping.material}};
}
inline StatedAmounts stated_amounts(const RecipeColouring& colouring) {
    if (!colouring.dose) return {};
    return {{"dose", *colouring.dose, Kind::mass}};
}

}  // namespace dyestead
