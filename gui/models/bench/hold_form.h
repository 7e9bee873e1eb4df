// hold_form.h - bars or goods put by that must not be sold or used, and set free again; loaves planned.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form hold_form(const Writing& writing, std::optional<Key<Lot>> lot, std::optional<Key<Hold>> corrected = std::nullopt);
Form release_form(const Writing& writing, std::optional<Key<Lot>> lot,
                  std::optional<Key<Release>> corrected = std::nullopt);
// What a hold that was just kept means: how many bars are on hold now.
std::string held_meant(const Writing& after);
Form plan_form(const Writing& writing, std::optional<Key<Material>> bar,
               std::optional<Key<Plan>> corrected = std::nullopt);

}  // namespace dyestead::gui
