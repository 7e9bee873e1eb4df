// fair_form.h - a fair put down with what to take along, and counted back in the evening.
#pragma once

#include "gui/models/form/form.h"

namespace dyestead::gui {

// Filled with what the plan would take, where the fair is still to come.
Form fair_form(const Writing& writing, std::optional<Key<Fair>> corrected = std::nullopt);
// What came home, what was in the tin, how the day was. Of a fair that is put down.
Form count_back_form(const Writing& writing, Key<Fair> fair);

// Stood by the day, and neither the tin nor any bar was counted since.
bool to_count_back(const Shop& shop, const Fair& fair, Day day);

}  // namespace dyestead::gui
