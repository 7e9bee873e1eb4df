// garden_choices.h - what the forms of the garden choose from, and what they guess at first.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "gui/models/form/choices.h"
#include "gui/models/form/fact_form.h"
#include "reports/words/say.h"

namespace dyestead::gui {

std::vector<Choice> plant_choices(const Shop& shop);
std::vector<Choice> bed_choices(const Shop& shop);
// Those that grow on the day that is written for, and `also`.
std::vector<Choice> plantings_to_choose(const Writing& writing, std::optional<Key<Planting>> also = std::nullopt);

bool is_seed(const Material& material);
bool is_garden_goods(const Material& material);  // seed, feed, water
std::vector<Choice> harvest_choices(const Shop& shop);

// An area, by its number alone.
Measuring in_square_metres(const FieldHow::Texts& texts, const Writing& writing);
// A weight.
Measuring in_weight(const FieldHow::Texts& texts, const Writing& writing);
// "4.5 m2" as people read it, without the unit: for a heading that carries it.
double square_metres(std::int64_t square_centimetres);

// The planting that was chosen: the only one that grows, or the one of the last record of its kind.
template <class Fact>
std::optional<Key<Planting>> last_planting(const Shop& shop) {
    const Fact* last = nullptr;
    for (const Fact& fact : shop.all<Fact>())
        if (last == nullptr || fact.date >= last->date) last = &fact;
    return last != nullptr ? std::optional{last->planting} : std::nullopt;
}

// Puts the planting into the field "planting": the selected one, else the only one there is, else the last one's.
template <class Fact>
void guess_planting(FactForm<Fact>& form, const Writing& writing, std::optional<Key<Planting>> selected) {
    using reports::say;
    const auto& choices = form.form().field("planting").choices;
    const auto code = [](Key<Planting> key) { return KeyCodes{}.code_of(key); };
    if (selected) {
        form.guess("planting", code(*selected), {});
    } else if (choices.size() == 1) {
        form.guess("planting", choices.front().code, say("the only one that grows"));
    } else if (const auto last = last_planting<Fact>(writing.shop())) {
        const std::string wanted = code(*last);
        if (std::ranges::find(choices, wanted, &Choice::code) != choices.end())
            form.guess("planting", wanted, say("from your last"));
    }
}

// The planting a corrected record stands at.
template <class Fact>
std::optional<Key<Planting>> planting_of(const Shop& shop, std::optional<Key<Fact>> corrected) {
    const Fact* fact = corrected ? shop.find(*corrected) : nullptr;
    return fact != nullptr ? std::optional{fact->planting} : std::nullopt;
}

// "Indigo, long bed": for titles of entries, where the day of sowing says too much.
std::string planting_in_short(const Shop& shop, Key<Planting> planting);

// A lot of its own for what a form brings in, with a code from the material's name and the day.
Key<Lot> new_lot(const Material& material, Day day, const Writing& writing, Kept& kept);

}  // namespace dyestead::gui
