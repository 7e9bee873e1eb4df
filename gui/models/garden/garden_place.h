// garden_place.h - the Garden: plantings on a season line, cuts, time there, beds and plants.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

std::unique_ptr<PlaceModel> garden_place();

}  // namespace dyestead::gui
