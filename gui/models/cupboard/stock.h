// stock.h - what is in the cupboard, material by material and lot by lot, and what it cost?
// Bars are not here: in cure they are the Bench's, cured the Stall's.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "gui/models/books.h"
#include "reports/document.h"

namespace dyestead::gui {

// A list and what each of its rows stands for.
struct MaterialList {
    reports::Table table;
    std::vector<Key<Material>> materials;
};

// All that has ever been in the cupboard and answers to the search: its name or a lot's code contains it, whatever the
// case of the letters A to Z. By name; what is used up stands at the end.
MaterialList cupboard_list(const Books& books, std::string_view search);

// The lots of one material, those with something left first, each by day.
reports::Table lot_list(const Books& books, Key<Material> material);

// Name of the material, and how much of it is left in how many lots.
std::string material_sentence(const Books& books, Key<Material> material);

// "23 things in hand, £412 at cost without your own hours, £530 with them."
std::string cupboard_state(const Books& books);

}  // namespace dyestead::gui
