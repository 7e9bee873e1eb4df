// colour_forms.h - what a vat is for: a colour, what it is held against, whether it may be sold; and how it is worked.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form colour_form(const Writing& writing, std::optional<Key<Colour>> corrected = std::nullopt);
// How much of a powder gives the shade of one gram of what it is held against, in words. `of`: the lot that is
// selected.
Form shade_test_form(const Writing& writing, std::optional<Key<ShadeTest>> corrected = std::nullopt,
                     std::optional<Key<Lot>> of = std::nullopt);
Form allowed_form(const Writing& writing, std::optional<Key<Allowed>> corrected = std::nullopt);
Form method_form(const Writing& writing, std::optional<Key<Method>> corrected = std::nullopt);
// The starter method as the maker's own from now on; the alkali is put down when there is none.
std::optional<Kept> take_starter_method(const Writing& writing);

}  // namespace dyestead::gui
