// supply_forms.h - what comes into the cupboard: deliveries, what was already here, suppliers and their prices.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form delivery_form(const Writing& writing, std::optional<Key<Delivery>> corrected = std::nullopt);
Form already_here_form(const Writing& writing, std::optional<Key<AlreadyHere>> corrected = std::nullopt);
Form supplier_form(const Writing& writing, std::optional<Key<Supplier>> corrected = std::nullopt);
// A supplier's price; of a new one `like` gives the first values: the last price of the same material.
Form offer_form(const Writing& writing, std::optional<Key<Offer>> corrected = std::nullopt,
                std::optional<Key<Material>> of = std::nullopt);

}  // namespace dyestead::gui
