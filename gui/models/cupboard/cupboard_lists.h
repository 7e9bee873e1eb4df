// cupboard_lists.h - the lists of the Cupboard beside its stock.
#pragma once

#include "domain/decisions/reorder.h"
#include "gui/models/place.h"

namespace dyestead::gui {

Listing order_list(const Books& books, const Reorder& answer, std::string_view find);
Listing delivery_list(const Books& books, std::string_view find);
Listing offer_list(const Books& books, std::string_view find);
Listing supplier_list(const Books& books, std::string_view find);
Listing loss_list(const Books& books, std::string_view find);
Listing count_list(const Books& books, std::string_view find);
Listing already_here_list(const Books& books, std::string_view find);
Listing measure_list(const Books& books, std::string_view find);

// The lines of a delivery, and what each came to with its share of postage.
reports::Table delivery_lines(const Books& books, Key<Delivery> delivery);
// "Order 2 packs of 5 kg from the mill by 8 July; it takes 4 to 9 days."
// Of a colourant that runs short for the plans: buy it in, or pour fewer; blank for all else.
std::string colour_told(const Books& books, const Reorder& answer, Key<Material> material);
std::string order_sentence(const Books& books, const Reorder& answer, Key<Material> material);
// The order it belongs to, ready to be sent.
std::optional<reports::Table> draft_order(const Books& books, const Reorder& answer, Key<Material> material);

}  // namespace dyestead::gui
