// bars.h - which bars and lots of bars can be chosen, and in what state is a lot, in words?
#pragma once

#include <map>

#include "domain/decisions/shelf.h"
#include "gui/models/form/choices.h"

namespace dyestead::gui {

std::vector<Choice> bar_choices(const Shop& shop);
// The kinds of bar a recipe makes.
std::vector<Choice> bars_of_recipe(const Shop& shop, Key<Recipe> recipe);
// The recipe that makes a kind of bar; null where none does.
const Recipe* recipe_of_bar(const Shop& shop, Key<Material> bar);

// Lots of bars still there that `wanted` takes, by the day they are ready: "blue, lot blue-3, 24 bars, ready 11
// August".
std::vector<Choice> bar_lot_choices(const Books& books, const std::function<bool(const ShelfLot&)>& wanted);
// The same of lots that may be sold, "by rule" first; `chosen` too, whatever its state.
std::vector<Choice> sellable_lot_choices(const Books& books, const std::vector<std::optional<Key<Lot>>>& chosen = {});
// Bars that may be sold today, by kind: held ones and those in cure are none of them.
std::map<Key<Material>, int> ready_bars(const Books& books);
// "ready 11 August 2026", "on hold: lye 6 % over", "past its best".
std::string bar_state_words(const Books& books, const ShelfLot& lot);
// "lye 6 % over", "no oil left over", or what the hold says.
std::string held_words(const Shop& shop, const Held& held);

// Bars from thousandths; a part of a bar counts for none.
constexpr int whole_bars(std::int64_t thousandths) {
    return static_cast<int>(thousandths / 1'000);
}

}  // namespace dyestead::gui
