// vats.h - how was each vat worked, what did it give, and what is left of the powder?
#pragma once

#include <string>
#include <vector>

#include "gui/models/books.h"
#include "reports/document.h"

namespace dyestead::gui {

// A list and what each of its rows stands for.
struct VatList {
    reports::Table table;
    std::vector<Key<Vat>> vats;
};

// Newest first.
VatList vat_list(const Books& books);

// The steps as they were worked.
reports::Table step_list(const Books& books, Key<Vat> vat);
// "Vat of 3 July 2026, blue: 2 h 05 min hands-on, 27 h waiting."
std::string vat_sentence(const Books& books, Key<Vat> vat);

// "One vat is standing. Powder in hand: 3 g blue, 41 g yellow."
std::string vat_state(const Books& books);

}  // namespace dyestead::gui
