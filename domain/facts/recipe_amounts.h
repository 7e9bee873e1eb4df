// recipe_amounts.h - how much of each thing does one loaf of a recipe take?
// A part is stated as an amount, or as a share of the recipe's oils, in which case the recipe says
// how much oil a loaf takes.
#pragma once

#include "domain/facts/shop.h"

namespace dyestead {

// Nothing where neither can be said. An amount that was stated wins over a share.
inline std::optional<Amount> part_amount(const Recipe& recipe, const RecipePart& part) {
    if (part.amount) return part.amount;
    if (!part.share || !recipe.oils) return std::nullopt;
    const Quantity oils = recipe.oils->quantity;
    return Amount{Quantity{oils.kind(), times(oils.in_base(), *part.share)}, Unit::g, Mark::measured};
}

}  // namespace dyestead
