// starter_plants.h - what may be expected of a dye plant before one's own records say: harvest from a square metre,
// years to the first crop, seed. From then on it is the maker's own, to change as the beds teach.
//
// Common practice, no source: all figures; they are wide on purpose and marked as about.
#pragma once

#include <string_view>

#include "domain/facts/garden.h"

namespace dyestead {

// Fills in what is known of a plant of that name ("Japanese indigo", "weld"); false, and nothing changed, where
// nothing is.
bool fill_in_starter(Plant& plant, std::string_view name);

}  // namespace dyestead
