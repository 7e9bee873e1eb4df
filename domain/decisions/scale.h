// scale.h - how much of everything does a recipe take for another mould, or for so many bars?
// The factor is exact; each amount is rounded once, to its base unit.
#pragma once

#include <optional>
#include <vector>

#include "domain/ledger/lye.h"

namespace dyestead {

struct ScaledPart {
    Key<Material> material;
    std::optional<Quantity> amount;  // nothing: the recipe does not say how much
};

struct ScaledRecipe {
    Ratio loaves;                   // the factor: 1 is the recipe as it stands
    std::vector<ScaledPart> parts;  // oils, scent
    LyeNeed lye;                    // likewise scaled
    std::optional<Quantity>
        mass;  // oils, lye, water and what else is weighed; nothing while something of it is not known
};

// Nothing where the recipe cannot be brought to that size: it has no bars, or its mass is not known.
std::optional<ScaledRecipe> for_bars(const Shop& shop, const Recipe& recipe, int bars);
// `weight`: of soap batter poured in.
std::optional<ScaledRecipe> for_weight(const Shop& shop, const Recipe& recipe, Quantity weight);
// `batter_density`: grams of batter in a millilitre.
std::optional<ScaledRecipe> for_volume(const Shop& shop, const Recipe& recipe, Quantity volume, Ratio batter_density);

}  // namespace dyestead
