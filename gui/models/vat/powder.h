// powder.h - how much dry pigment is in hand, how strong is it, and what did a gram cost?
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "gui/models/books.h"
#include "reports/document.h"

namespace dyestead::gui {

// By lot, newest first, what is used up at the end.
struct PowderList {
    reports::Table table;
    std::vector<Key<Lot>> lots;  // what each row stands for
};
PowderList powder_list(const Books& books);

// Grams by the colour's name as it stands in a sentence, in the order of the colours; none of what is used up.
std::vector<std::pair<std::string, double>> powder_in_hand(const Books& books);

}  // namespace dyestead::gui
