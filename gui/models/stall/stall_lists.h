// stall_lists.h - the lists of the Stall: bars and prices, fairs, orders and shops, the price list.
#pragma once

#include "domain/decisions/prices.h"
#include "gui/models/place.h"

namespace dyestead::gui {

// By name; held bars are never among the ready ones.
Listing bar_list(const Books& books, std::string_view find);
// Newest first, those to come at the top.
Listing fair_list(const Books& books, std::string_view find);
// Sales but at fairs, bars out at shops and settled there, bars brought back; newest first.
Listing order_list(const Books& books, std::string_view find);
// Prices by bar, newest first; below them what the maker believes.
Listing price_list(const Books& books, std::string_view find);

// What making one again costs today, part by part.
reports::Table bar_table(const Books& books, const Prices& prices, Key<Material> bar);
// "118 bars ready in 6 kinds, 12 on hold. Next fair: 18 July 2026."
std::string stall_state(const Books& books);

}  // namespace dyestead::gui
