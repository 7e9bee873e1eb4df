// garden_lists.h - the lists of the Garden that say what was worked with: plantings, cuts, time, beds and plants.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

// These three with the newest first.
Listing planting_list(const Books& books, std::string_view find);
Listing cut_list(const Books& books, std::string_view find);
// A share of time told over several plantings is shown at each of them.
Listing time_list(const Books& books, std::string_view find);
Listing bed_list(const Books& books, std::string_view find);
Listing plant_list(const Books& books, std::string_view find);

}  // namespace dyestead::gui
