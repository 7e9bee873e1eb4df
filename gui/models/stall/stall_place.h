// stall_place.h - the Stall: bars that are ready and their prices, fairs before and after, orders, bars out at shops.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

std::unique_ptr<PlaceModel> stall_place();

}  // namespace dyestead::gui
