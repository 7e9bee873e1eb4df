// settings_place.h - what the shop goes by, as lists to correct: in the Books.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

std::unique_ptr<PlaceModel> settings_place();

}  // namespace dyestead::gui
