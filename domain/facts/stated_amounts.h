// stated_amounts.h - which amounts does a fact state, and of what kind must each be?
// Either of one kind (a bed has an area), or an amount of a material, which must lead to the kind the
// material is held in (material_amount.h), or of the material of a lot.
#pragma once

#include <string_view>
#include <variant>
#include <vector>

#include "domain/facts/bench.h"
#include "domain/facts/garden.h"
#include "domain/facts/stall.h"

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
inline StatedAmounts stated_amounts(const Material& material) {
    if (!material.shelf_room) return {};
    return {{"shelf_room", *material.shelf_room, material.key}};
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
inline StatedAmounts stated_amounts(const CountLine& line) {
    if (!line.counted) return {};
    return {{"counted", *line.counted, line.material}};
}
inline StatedAmounts stated_amounts(const OwnMeasure& measure) {
    if (!measure.material) return {};
    return {{"amount", measure.amount, *measure.material}};
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
inline StatedAmounts stated_amounts(const SeedKept& kept) {
    return {{"amount", kept.amount, kept.lot}};
}
inline StatedAmounts stated_amounts(const BedLost& lost) {
    return {{"area", lost.area, Kind::area}};
}
inline StatedAmounts stated_amounts(const Method& method) {
    StatedAmounts all;
    if (method.low) all.push_back({"low", *method.low, Kind::mass});
    if (method.usual) all.push_back({"usual", *method.usual, Kind::mass});
    if (method.high) all.push_back({"high", *method.high, Kind::mass});
    return all;
}
inline StatedAmounts stated_amounts(const MethodUse& use) {
    return {{"amount", use.amount, use.material}};
}
inline StatedAmounts stated_amounts(const VatHeat& heat) {
    StatedAmounts all;
    if (heat.energy) all.push_back({"energy", *heat.energy, Kind::energy});
    if (heat.water) all.push_back({"water", *heat.water, Kind::volume});
    return all;
}
inline StatedAmounts stated_amounts(const Drying& drying) {
    StatedAmounts all;
    if (drying.amount && drying.lot) all.push_back({"amount", *drying.amount, *drying.lot});
    if (drying.amount && !drying.lot) all.push_back({"amount", *drying.amount, Kind::mass});
    if (drying.lost) all.push_back({"lost", *drying.lost, Kind::mass});
    return all;
}
inline StatedAmounts stated_amounts(const DryingLot& line) {
    return {{"amount", line.amount, line.lot}};
}
inline StatedAmounts stated_amounts(const Recipe& recipe) {
    StatedAmounts all{{"declared_weight", recipe.declared_weight, Kind::mass}};
    if (recipe.oils) all.push_back({"oils", *recipe.oils, Kind::mass});
    return all;
}
inline StatedAmounts stated_amounts(const RecipePart& part) {
    if (!part.amount) return {};
    return {{"amount", *part.amount, part.material}};
}
inline StatedAmounts stated_amounts(const Cut& cut) {
    if (!cut.ends) return {};
    return {{"ends", *cut.ends, Kind::mass}};
}
inline StatedAmounts stated_amounts(const Weighing& weighing) {
    return {{"total", weighing.total, Kind::mass}};
}
inline StatedAmounts stated_amounts(const RecipeWrapping& wrapping) {
    return {{"per_bar", wrapping.per_bar, wrapping.material}};
}
inline StatedAmounts stated_amounts(const RecipeColouring& colouring) {
    if (!colouring.dose) return {};
    return {{"dose", *colouring.dose, Kind::mass}};
}
inline StatedAmounts stated_amounts(const PowderPrice& price) {
    return {{"pack", price.pack, Kind::mass}};
}

}  // namespace dyestead
