// choices.h - what can be chosen in a form: people, materials, lots, beds ... by name, in the order of their names.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "gui/models/form/field_values.h"
#include "gui/models/form/form.h"

namespace dyestead::gui {

// All facts of a kind that `wanted` takes, by name; `none` is the first choice where one may choose nothing.
template <class Fact>
std::vector<Choice> choices_of_kind(const Shop& shop, const std::function<bool(const Fact&)>& wanted,
                                    const std::function<std::string(const Fact&)>& named,
                                    const std::optional<std::string>& none = std::nullopt) {
    std::vector<Choice> choices;
    for (const Fact& fact : shop.all<Fact>())
        if (!wanted || wanted(fact)) choices.push_back({KeyCodes{}.code_of(fact.key), named(fact)});
    std::ranges::stable_sort(choices, {}, &Choice::shown);
    if (none) choices.insert(choices.begin(), Choice{"", *none});
    return choices;
}

std::vector<Choice> people_choices(const Shop& shop);  // "not noted" first
std::vector<Choice> material_choices(const Shop& shop, const std::function<bool(const Material&)>& wanted);
std::vector<Choice> colour_choices(const Shop& shop, const std::optional<std::string>& none = std::nullopt);
std::vector<Choice> supplier_choices(const Shop& shop);
std::vector<Choice> recipe_choices(const Shop& shop);
// "Indigo, bed by the wall, sown 2 April 2026"; those still growing on the day, newest first.
std::vector<Choice> planting_choices(const Shop& shop, Day day);
std::string planting_name(const Shop& shop, const Planting& planting);
// Lots of a material with something left, "by rule" first: "can of 3 May, 1.2 kg left".
std::vector<Choice> lot_choices(const Books& books, Key<Material> material);

// The words of an enumeration, said by `shown` in their order.
template <class Enum>
std::vector<Choice> word_choices(const std::vector<std::string>& shown) {
    std::vector<Choice> choices;
    for (std::size_t i = 0; i < shown.size() && i < kWords<Enum>.size(); ++i)
        choices.push_back({std::string{kWords<Enum>[i]}, shown[i]});
    return choices;
}

// The measures the shop has for a material, and for anything.
std::vector<TypedMeasure> measures_for(const Shop& shop, std::optional<Key<Material>> material);
// What an amount of the material in the field `material_id` may be told by.
std::function<const Material*(const std::function<const std::string&(std::string_view)>&, const Writing&)>
material_in_field(std::string material_id);

}  // namespace dyestead::gui
