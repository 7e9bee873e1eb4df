// price_forms.h - what a bar is sold for from a day on, to customers and to shops; what powder is sold for; and what
// people would pay in the maker's belief.
#pragma once

#include "domain/decisions/prices.h"
#include "gui/models/form/form.h"

namespace dyestead::gui {

Form price_form(const Writing& writing, std::optional<Key<Material>> bar,
                std::optional<Key<Price>> corrected = std::nullopt);
Form wholesale_price_form(const Writing& writing, std::optional<Key<Material>> bar,
                          std::optional<Key<WholesalePrice>> corrected = std::nullopt);
Form powder_price_form(const Writing& writing, std::optional<Key<PowderPrice>> corrected = std::nullopt);
Form belief_form(const Writing& writing, std::optional<Key<PriceBelief>> corrected = std::nullopt);

// Left over of a shelf price before own time, once fees, tax, making and selling are paid; nothing where a price or a
// cost is not known.
std::optional<double> left_over(const Prices& prices, const BarPrice& bar);
// "Plain bar sells for 5.50: 3.10 a bar is left over before your time, 5.90 an hour with selling."
std::string price_told(const Books& books, const Prices& prices, Key<Material> bar);
// The same with what shops pay for it, and the bundles that do not clear it.
std::string bar_told(const Books& books, const Prices& prices, Key<Material> bar);

}  // namespace dyestead::gui
