// ground_forms.h - a bed and a plant: where things grow, and what may be expected of them.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form bed_form(const Writing& writing, std::optional<Key<Bed>> corrected = std::nullopt);

// The harvest of a bad, a usual and a good year may be left blank where the plant is known (starter_plants.h).
Form plant_form(const Writing& writing, std::optional<Key<Plant>> corrected = std::nullopt);

}  // namespace dyestead::gui
