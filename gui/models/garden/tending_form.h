// tending_form.h - time in the garden, at one planting or several in one go, and what they were given.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

// What it is begun as: only what stands in the form at first differs.
enum class TendingAs { time, sown_again };

Form tending_form(const Writing& writing, std::optional<Key<Planting>> selected, TendingAs as = TendingAs::time,
                  std::optional<Key<Tending>> corrected = std::nullopt);

}  // namespace dyestead::gui
