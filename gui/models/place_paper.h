// place_paper.h - a place as it goes on paper: how it stands, the list that is shown, what is told of the line that is
// selected, and the picture; the same words as on the screen.
#pragma once

#include <optional>

#include "gui/models/place.h"

namespace dyestead::gui {

// `listing`: which of the lists is shown, `shown` as it is shown, `row`: the place of the selected one in it.
reports::Document place_paper(const PlaceModel& model, const Books& books, std::size_t listing, const Listing& shown,
                              std::optional<std::size_t> row);

}  // namespace dyestead::gui
