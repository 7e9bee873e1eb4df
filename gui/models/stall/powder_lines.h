// powder_lines.h - powder in a sale: which, how much of it, and for how much, typed or as its price was put down.
#pragma once

#include "gui/models/form/fact_form.h"

namespace dyestead::gui {

// Whether every sale asks for powder too: a price of some is put down, or some was sold. Whoever sells none never sees
// these lines.
bool may_sell_powder(const Shop& shop);

LineForm<PowderLine> powder_lines(const Writing& writing, std::optional<Key<Sale>> sale);

// What so much of a powder fetches at the price put down for its colour.
std::optional<Money> powder_asked(const Shop& shop, Key<Material> pigment, const Amount& amount, Day day);

// How much of a lot to begin with: a pack, as its price was put down, or what is left where that is less.
std::string pack_text(const Writing& writing, const Lot& lot);

// Lines without a price get that one; false, with the reason beside them, where there is none.
bool price_powder(const Sale& sale, Form& form, const Shop& shop, std::vector<PowderLine>& lines);

// Says beside each line what it comes to, and what is not there; `lines`: those that could be read.
struct PowderSum {
    std::int64_t milligrams = 0;
    Money money;
};
PowderSum look_at_powder(const Sale& sale, Form& form, const Writing& now, const std::vector<PowderLine>& lines);

}  // namespace dyestead::gui
