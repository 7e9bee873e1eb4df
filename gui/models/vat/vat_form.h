// vat_form.h - a vat as it was begun or told at the end in five answers, its steps as they are done, and drying.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

// Leaf, water, washes, hands-on, a note: what a sheet beside the pan holds. All but day and colour may stay blank.
Form vat_form(const Writing& writing, std::optional<Key<Vat>> corrected = std::nullopt);
// All steps of a vat: those noted, and the next one of its method ready to be added.
Form vat_steps_form(const Writing& writing, Key<Vat> vat);
// The vats on one plate, weighed. A new one has every vat that stands.
Form drying_form(const Writing& writing, std::optional<Key<Drying>> corrected = std::nullopt);

}  // namespace dyestead::gui
