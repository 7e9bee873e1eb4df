// vat_place.h - the Vat: every vat and what it gave, powder by lot, drying, shade tests, methods and colours.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

std::unique_ptr<PlaceModel> vat_place();

}  // namespace dyestead::gui
