// shop_forms.h - bars out at somebody's shop, what became of them, and bars a customer brought back.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

Form out_form(const Writing& writing, std::optional<Key<OutAtShop>> corrected = std::nullopt);
Form settled_form(const Writing& writing, std::optional<Key<OutAtShop>> out,
                  std::optional<Key<OutSettled>> corrected = std::nullopt);
Form returned_form(const Writing& writing, std::optional<Key<Returned>> corrected = std::nullopt);

// Bars not yet sold there or come back, but for what one settling says.
int still_out(const Shop& shop, const OutAtShop& out, Day day, Key<OutSettled> but_for = {});

}  // namespace dyestead::gui
