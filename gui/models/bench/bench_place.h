// bench_place.h - the Bench: recipes with their lye, batches, the curing shelf, what a bar cost part by part.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

std::unique_ptr<PlaceModel> bench_place();

}  // namespace dyestead::gui
