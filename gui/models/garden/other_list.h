// other_list.h - what else befell the beds: seed kept and tried, part of a bed lost, what was expected, beds done with,
// beds that stood already. Each a row of its own, so that each can be corrected.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

// Newest first.
Listing other_list(const Books& books, std::string_view find);
// The form that corrects a row of it; nothing for a row of another list.
std::optional<Form> correct_other(const Writing& writing, FactRef row);
// The planting such a row is about; nothing where it is about seed, or stands in another list.
std::optional<Key<Planting>> planting_of_other(const Shop& shop, FactRef row);

}  // namespace dyestead::gui
