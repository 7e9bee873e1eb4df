// today_place.h - Today: what wants doing, what was jotted down, what does not add up, and time that belongs to nothing
// else.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

std::unique_ptr<PlaceModel> today_place();

}  // namespace dyestead::gui
