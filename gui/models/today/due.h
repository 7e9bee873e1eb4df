// due.h - what wants doing in the next days: vats that stand, bars out of cure, what to order, what goes off, fairs.
#pragma once

#include <string>
#include <vector>

#include "gui/models/books.h"
#include "gui/models/places.h"
#include "gui/models/vat/at_the_pan.h"

namespace dyestead::gui {

struct Due {
    Day day{};
    std::string what;    // "24 blue bars are out of cure"
    Place place{};       // where it is seen to
    std::string advice;  // one or two sentences: what it is, what to do, what to mind
    FactRef about{};     // a Vat, Lot, Material or Fair
};

// The first first; what is late stands before all. Of the next `days` days. A clock that runs at a vat is no fact yet:
// it is told.
std::vector<Due> due(const Books& books, int days = 30, const std::vector<RunningClock>& clocks = {});

}  // namespace dyestead::gui
