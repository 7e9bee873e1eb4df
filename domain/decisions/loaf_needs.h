// loaf_needs.h - what do so many loaves of a recipe, in one of its colourings, take?
//
// Oils and scent as the recipe says, lye and water as its oils call for, the dose of colour at the strength of
// what is to hand, wrapping for every bar. Whole base units, so that stock can be held against them.
#pragma once

#include <vector>

#include "domain/decisions/records.h"
#include "domain/facts/shop.h"

namespace dyestead {

struct Need {
    Key<Material> material;
    std::int64_t quantity = 0;  // base units, as the material is held
    bool colour = false;        // the dose
};

enum class Unsaid : std::uint8_t {
    amount,          // a part of the recipe: neither an amount nor a share, or of another kind than it is held in
    lye,             // a saponification value or a weight is missing
    no_lye,          // no lye, or no water, is on record to make it with
    dose,            // the colouring has no dose
    no_colourant,    // no bought match, or no powder of the colour
    no_such_recipe,  // nothing makes this bar
};

struct LoafNeeds {
    const Recipe* recipe = nullptr;
    const RecipeColouring* colouring = nullptr;
    std::vector<Need> needs;  // each material once, in the order of the recipe
    std::vector<Unsaid> unsaid;
};

// For the recipe that makes this kind of bar. Own powder is taken to be as strong as its tested lots in stock,
// weighed together; as the standard where none is tested.
LoafNeeds loaf_needs(const Records& records, Key<Material> bar, int loaves);

}  // namespace dyestead
