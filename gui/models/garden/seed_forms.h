// seed_forms.h - seed kept from a planting, and how much of a lot of seed comes up.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form seed_kept_form(const Writing& writing, std::optional<Key<Planting>> selected,
                    std::optional<Key<SeedKept>> corrected = std::nullopt);

Form germination_form(const Writing& writing, std::optional<Key<GerminationTry>> corrected = std::nullopt);

}  // namespace dyestead::gui
