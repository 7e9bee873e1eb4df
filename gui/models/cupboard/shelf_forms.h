// shelf_forms.h - what happens in the cupboard: things described, lost, counted; measures of the maker's own.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form material_form(const Writing& writing, std::optional<Key<Material>> corrected = std::nullopt);
// Of a new one `of` is what is lost.
Form loss_form(const Writing& writing, std::optional<Key<Loss>> corrected = std::nullopt,
               std::optional<Key<Material>> of = std::nullopt);
// A new one lists all that is in the cupboard, with what the books say beside it; blank is not counted.
Form count_form(const Writing& writing, std::optional<Key<Count>> corrected = std::nullopt);
Form own_measure_form(const Writing& writing, std::optional<Key<OwnMeasure>> corrected = std::nullopt);

}  // namespace dyestead::gui
