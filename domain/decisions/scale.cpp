#include "domain/decisions/scale.h"

#include "domain/facts/material_amount.h"
#include "domain/facts/recipe_amounts.h"

namespace dyestead {
namespace {

Quantity times(Quantity quantity, Ratio factor) {
    return {quantity.kind(), dyestead::times(quantity.in_base(), factor)};
}

std::optional<Quantity> mass_of(const Material& material, const Amount& amount) {
    if (amount.quantity.kind() == Kind::mass) return amount.quantity;
    if (amount.quantity.kind() != Kind::volume || !material.density) return std::nullopt;
    return Quantity{Kind::mass, dyestead::times(amount.quantity.in_base(), *material.density)};
}

ScaledRecipe scaled_by(const Shop& shop, const Recipe& recipe, Ratio loaves) {
    ScaledRecipe result;
    result.loaves = loaves;
    result.lye = lye_need(shop, recipe);
    LyeNeed& lye = result.lye;
    bool known = lye.lye && lye.water;
    Quantity mass = lye.lye.value_or(Quantity{}) + lye.water.value_or(Quantity{});
    for (const RecipePart& part : shop.all<RecipePart>()) {
        if (part.head != recipe.key) continue;
        const auto amount = part_amount(recipe, part);
        const Material* material = shop.find(part.material);
        const bool in_lye =
            material != nullptr && (material->purpose == Purpose::lye || material->purpose == Purpose::water);
        const auto weighs = amount && material != nullptr ? mass_of(*material, *amount) : std::nullopt;
        if (!in_lye) known = known && weighs.has_value();
        if (!in_lye && weighs) mass += *weighs;
        result.parts.push_back({part.material, amount ? std::optional{times(amount->quantity, loaves)} : std::nullopt});
    }
    if (known) result.mass = times(mass, loaves);
    lye.oils = times(lye.oils, loaves);
    if (lye.lye) lye.lye = times(*lye.lye, loaves);
    if (lye.water) lye.water = times(*lye.water, loaves);
    lye.sodium.weighed = times(lye.sodium.weighed, loaves);
    lye.potassium.weighed = times(lye.potassium.weighed, loaves);
    lye.as_sodium = times(lye.as_sodium, loaves);
    return result;
}

}  // namespace

std::optional<ScaledRecipe> for_bars(const Shop& shop, const Recipe& recipe, int bars) {
    if (recipe.bars_per_loaf <= 0 || bars < 0) return std::nullopt;
    return scaled_by(shop, recipe, {bars, recipe.bars_per_loaf});
}

std::optional<ScaledRecipe> for_weight(const Shop& shop, const Recipe& recipe, Quantity weight) {
    const auto one = scaled_by(shop, recipe, {1, 1}).mass;
    if (!one || one->is_zero() || weight.kind() != Kind::mass || weight.in_base() < 0) return std::nullopt;
    return scaled_by(shop, recipe, {weight.in_base(), one->in_base()});
}

std::optional<ScaledRecipe> for_volume(const Shop& shop, const Recipe& recipe, Quantity volume, Ratio batter_density) {
    if (volume.kind() != Kind::volume) return std::nullopt;
    return for_weight(shop, recipe, Quantity::milligrams(dyestead::times(volume.in_base(), batter_density)));
}

}  // namespace dyestead
