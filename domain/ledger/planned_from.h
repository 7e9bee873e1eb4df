// planned_from.h - which kinds of bar do the recipes make from a material, and in what is a bar wrapped?
#pragma once

#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

// Lye and water go into all of them; a powder or bought colourant into those of its colour.
std::vector<Key<Material>> planned_from(const Shop& shop, Key<Material> material);

// The wrapping lines of the first recipe that makes this kind of bar.
std::vector<const RecipeWrapping*> wrapping_of(const Shop& shop, Key<Material> bar);

}  // namespace dyestead
