// cut_form.h - what becomes of loaves: cut into bars, weighed in cure, wrapped.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

// A batch cut into bars; their lot is made by itself.
Form cut_form(const Writing& writing, std::optional<Key<Batch>> batch,
              std::optional<Key<Cut>> corrected = std::nullopt);
// Bars of one lot on the scale together: `318 g / 3`.
Form weigh_form(const Writing& writing, std::optional<Key<Lot>> lot,
                std::optional<Key<Weighing>> corrected = std::nullopt);
Form wrap_form(const Writing& writing, std::optional<Key<Lot>> lot,
               std::optional<Key<Wrapping>> corrected = std::nullopt);

// The bars that are not held and not yet wrapped, as far as the wrappings of the lot say.
int not_wrapped(const Books& books, Key<Lot> lot);

}  // namespace dyestead::gui
