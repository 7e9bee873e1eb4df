// cut_form.h - what was cut of a planting, and what that comes to.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

// The lot it goes into is made by itself. `selected`: the planting it was cut from.
Form cut_form(const Writing& writing, std::optional<Key<Planting>> selected,
              std::optional<Key<Harvest>> corrected = std::nullopt);

}  // namespace dyestead::gui
