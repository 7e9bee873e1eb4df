// hold_recalled.h - what of the recalled goods is still here and may still be sold, and the one entry that puts all of
// it on hold?
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "gui/models/ask/questions.h"

namespace dyestead::gui {

struct RecalledHere {
    std::vector<Key<Lot>> lots;  // here by the day the books stand at, and not on hold
    int not_made_up = 0;         // beds, vats and batches that hold some and have no lot yet
};

// `asked.as_of` means nothing here: what was here on another day cannot be put by now.
RecalledHere recalled_here(const Books& books, const Asked& asked);

// One Hold for each of those lots, all in one entry, so that one Undo takes them back. Nothing where there is none.
std::optional<Kept> hold_recalled(const Writing& writing, const Asked& asked);

}  // namespace dyestead::gui
