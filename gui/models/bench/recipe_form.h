// recipe_form.h - a recipe written down: oils and what else goes in, wrapping, and the bars it makes.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form recipe_form(const Writing& writing, std::optional<Key<Recipe>> corrected = std::nullopt);

// "For one loaf 141 g of sodium hydroxide and 287 g of water; check it against the supplier's own value." Or what is
// missing to say it.
std::string lye_worked_out(const Shop& shop, const Recipe& recipe);

}  // namespace dyestead::gui
