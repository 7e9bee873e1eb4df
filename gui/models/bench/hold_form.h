// hold_form.h - bars or goods put by that must not be sold or used, and set free again; loaves planned.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form hold_form(const Writing& writing, std::optional<Key<Lot>> lot, std::optional<Key<Hold>> corrected = std::nullopt);
Form release_form(const Writing& writing, std::optional<Key<Lot>> lot,
                  std::optional<Key<Release>> corrected = std::nullopt);
Form plan_form(const Writing& writing, std::optional<Key<Material>> bar,
               std::optional<Key<Plan>> corrected = std::nullopt);

}  // namespace dyestead::gui
