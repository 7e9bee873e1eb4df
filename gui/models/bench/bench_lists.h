// bench_lists.h - the lists of the Bench: batches, recipes, the curing shelf, what is planned, what was wrapped.
#pragma once

#include "gui/models/place.h"

namespace dyestead::gui {

// Newest first.
Listing batch_list(const Books& books, std::string_view find);
Listing recipe_list(const Books& books, std::string_view find);
// Lots of bars with some left, by the day they are ready.
Listing shelf_list(const Books& books, std::string_view find);
// Loaves to be poured from today on, first those that come first.
Listing plan_list(const Books& books, std::string_view find);
Listing wrapping_list(const Books& books, std::string_view find);

// Lye and water of one loaf, oil by oil.
reports::Table lye_table(const Shop& shop, const Recipe& recipe);
// "48 bars curing, next 24 ready on 12 July. One batch on hold."
std::string bench_state(const Books& books);

}  // namespace dyestead::gui
