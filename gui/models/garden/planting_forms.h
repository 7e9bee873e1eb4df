// planting_forms.h - what befalls a planting: it failed or was dug up, part of it was lost, more or less is expected.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form planting_end_form(const Writing& writing, std::optional<Key<Planting>> selected,
                       std::optional<Key<PlantingEnd>> corrected = std::nullopt);

Form bed_lost_form(const Writing& writing, std::optional<Key<Planting>> selected,
                   std::optional<Key<BedLost>> corrected = std::nullopt);

Form expected_total_form(const Writing& writing, std::optional<Key<Planting>> selected,
                         std::optional<Key<ExpectedTotal>> corrected = std::nullopt);

}  // namespace dyestead::gui
