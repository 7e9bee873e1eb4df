// sowing_form.h - what was sown or planted, where and when; and a bed that stood before the books began.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

// A plant or bed that is not there yet is typed by its name and put down with the sowing.
Form sowing_form(const Writing& writing, std::optional<Key<Planting>> corrected = std::nullopt);

// A planting that stands already, with what had gone into it.
Form standing_bed_form(const Writing& writing, std::optional<Key<StandingBed>> corrected = std::nullopt);

}  // namespace dyestead::gui
