// today_place.h - Today: what wants doing, what was jotted down, what does not add up, and time that belongs to nothing
// else.
#pragma once

#include "gui/models/place.h"
#include "gui/models/vat/at_the_pan.h"

namespace dyestead::gui {

// `clocks`: those that run at a vat now.
std::unique_ptr<PlaceModel> today_place(std::function<std::vector<RunningClock>()> clocks = {});

}  // namespace dyestead::gui
