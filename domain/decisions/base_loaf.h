// base_loaf.h - what does a bar of a recipe cost before it is coloured?
//
// All batches of the recipe poured in the window and cut since, whatever their colour, with
// colourants and the time they took left out. A batch poured off from another has its share of what that
// took without colour; loaves count as stated. Over good bars: what was rejected is in the cost.
#pragma once

#include "domain/decisions/records.h"
#include "domain/decisions/window.h"

namespace dyestead {

struct BaseLoaf {
    int loaves = 0;
    double good_bars = 0;
    double wrapped_bars = 0;
    Cost cost;  // of all of them, wrapping so far and general overhead too

    bool known() const { return good_bars > 0 && loaves > 0; }
    // Good bars of one loaf, rejects taken off; of a recipe never poured, all of them.
    double bars_a_loaf(const Recipe& recipe) const {
        return known() ? good_bars / loaves : double{1} * recipe.bars_per_loaf;
    }
};

BaseLoaf base_loaf(const Records& records, const Recipe& recipe, Window days);

// The recipe with most good bars of the colour poured in the window: coloured with home pigment, else
// with bought; where no such bar was poured, the recipe for the colour with most bars of any kind.
struct BaseRecipe {
    const Recipe* recipe = nullptr;  // null: no recipe for the colour was poured and cut
    bool colour_poured = false;
};
BaseRecipe base_recipe(const Records& records, Key<Colour> colour, Window days);

// The recipe's line for a colouring; `colour` counts for all but plain. Null when there is none.
const RecipeColouring* colouring_of(const Shop& shop, Key<Recipe> recipe, Colouring colouring, Key<Colour> colour);

}  // namespace dyestead
