// sold_lines.h - what the lines of bars at the Stall have in common: how many are ready, and what the list asks.
#pragma once

#include "gui/models/bench/bars.h"
#include "gui/models/form/fact_form.h"
#include "gui/models/form/new_things.h"

namespace dyestead::gui {

// The column of a line; what is no column is a mistake of ours.
std::size_t column(const FormLines& lines, std::string_view id);
// Beside each line that asks for more bars than are ready: "only 5 ready". `count`: the column of how many.
void say_ready(FormLines& lines, std::string_view count, const Books& books);
// The lots that lines of a head name.
template <class LineFact>
std::vector<std::optional<Key<Lot>>> lots_named(const Shop& shop, Key<typename LineFact::Head> head) {
    std::vector<std::optional<Key<Lot>>> lots;
    for (const LineFact& line : shop.all<LineFact>())
        if (line.head == head) lots.push_back(line.lot);
    return lots;
}
// What is wrong with a lot chosen for a kind of bar; blank for nothing.
std::string lot_trouble(const Shop& shop, const std::optional<Key<Lot>>& lot, Key<Material> bar);
// Names typed before, as choices that are their own code: fairs, shops.
template <class Fact>
std::vector<Choice> names_typed(const Shop& shop, std::string Fact::*name) {
    std::vector<Choice> choices;
    for (const Fact& fact : shop.all<Fact>())
        if (std::ranges::find(choices, fact.*name, &Choice::code) == choices.end())
            choices.push_back({fact.*name, fact.*name});
    std::ranges::sort(choices, {}, &Choice::shown);
    return choices;
}

}  // namespace dyestead::gui
