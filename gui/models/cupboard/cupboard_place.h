// cupboard_place.h - the Cupboard: stock by material and lot, what to order, deliveries, prices, losses, stock-takes.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

std::unique_ptr<PlaceModel> cupboard_place();

}  // namespace dyestead::gui
