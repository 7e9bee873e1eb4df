// jotting_form.h - ten words now, a proper record later.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form jotting_form(const Writing& writing, std::optional<Key<Jotting>> corrected = std::nullopt);

// The jotting is seen to: entered as what it was, or not needed.
std::optional<Kept> jotting_done(const Writing& writing, Key<Jotting> jotting);

}  // namespace dyestead::gui
