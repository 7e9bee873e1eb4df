// fair_lines.h - the lines of a fair: what was taken of each kind, and what came back.
#pragma once

#include "gui/models/stall/sold_lines.h"

namespace dyestead::gui {

LineForm<FairLine> fair_lines(const Writing& writing, std::optional<Key<Fair>> fair);
LineForm<FairBundle> bundle_lines();
LineForm<FairTime> fair_time_lines(const Shop& shop);

}  // namespace dyestead::gui
