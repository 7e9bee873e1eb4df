// standing.h - which vats stand, and how much harvest is in one?
#pragma once

#include <vector>

#include "domain/decisions/method_bands.h"
#include "gui/models/books.h"

namespace dyestead::gui {

// Begun and not dried by the day, the oldest first.
std::vector<const Vat*> standing_vats(const Shop& shop, Day day);
// Harvest that is weighed or may be; 0 where none is noted.
double harvest_kg(const Shop& shop, const Vat& vat);
// The powder of our own of a colour; null where there is none yet.
const Material* powder_of(const Shop& shop, Key<Colour> colour);

}  // namespace dyestead::gui
