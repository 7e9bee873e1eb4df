// sale_form.h - bars or powder sold anywhere but at a fair: an order that is posted, or over the counter.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

// An order: its number, postage in and out. What was the same at the last one is filled in.
Form order_form(const Writing& writing, std::optional<Key<Sale>> corrected = std::nullopt);
// At the door, to a shop, to friends.
Form sale_form(const Writing& writing, std::optional<Key<Sale>> corrected = std::nullopt);
// A sale that begins with some of a lot of powder.
Form powder_sale_form(const Writing& writing, Key<Lot> lot);
// The one of the two that a sale was written with.
Form correct_sale(const Writing& writing, Key<Sale> sale);

// "This order earned 3.10 after post and box; at a fair it would have been 4.40."
std::string sale_told(const Books& books, Key<Sale> sale);

}  // namespace dyestead::gui
