// named.h - a field where a thing is chosen by name, or a name is typed that nothing has yet: then the thing is put
// down with the entry, with what can be guessed of it.
//
//   form.extra({.id = "bed", .label = say("&Bed"), .entry = Entry::name, .choices = ...});
//   form.also_read(name_reader<Planting, Bed>("bed", &Planting::bed, [](Bed& bed, Form& form, ...) { ... }));
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "domain/text/same_name.h"
#include "gui/models/form/field_values.h"
#include "gui/models/form/form.h"
#include "reports/words/say.h"

namespace dyestead::gui {

// What the text of the field stands for: the code of a choice, or a name that is there already. Null for a new name.
template <class Named>
const Named* named_fact(const Shop& shop, std::string_view text) {
    text = trimmed(text);
    if (const auto key = KeyCodes{}.key_of<Named>(text))
        if (const Named* found = shop.find(*key)) return found;
    for (const Named& each : shop.all<Named>())
        if (same_name(each.name, text)) return &each;
    return nullptr;
}

// Reads the field into a key. A new name becomes a new fact, filled in by `fill` and put into `kept`. Nothing, with
// the reason at the field, where it cannot be kept so.
template <class Named>
std::optional<Key<Named>> read_name(std::string_view id, Form& form, const Writing& writing, Kept* kept,
                                    const std::function<bool(Named&, Form&, const Writing&, Kept&)>& fill) {
    FormField& field = form.field(id);
    field.understood.clear();
    field.trouble.clear();
    const std::string name{trimmed(field.text)};
    if (name.empty()) {
        if (kept != nullptr) field.trouble = field_trouble(TroubleId::blank, {});
        return std::nullopt;
    }
    if (const Named* found = named_fact<Named>(writing.shop(), name)) return found->key;
    field.understood = reports::say("New here: {name} is put down with this entry.", reports::arg("name", name));
    if (kept == nullptr) return std::nullopt;
    Named made{};
    made.key = writing.new_key<Named>();
    made.code = free_code<Named>(writing.shop(), code_from(name));
    made.name = name;
    if (fill && !fill(made, form, writing, *kept)) return std::nullopt;
    const auto key = made.key;
    kept->change.put.template all<Named>().push_back(std::move(made));
    return key;
}

template <class Fact, class Named>
auto name_reader(std::string id, Key<Named> Fact::*member,
                 std::function<bool(Named&, Form&, const Writing&, Kept&)> fill = {}) {
    return [id = std::move(id), member, fill = std::move(fill)](
               Fact& fact, Form& form, const Writing& writing, Kept* kept) {
        const auto key = read_name<Named>(id, form, writing, kept, fill);
        if (key) fact.*member = *key;
        return key.has_value();
    };
}

// A fact that may just have been put into the change, or was there before.
template <class Fact>
const Fact* in_change_or_shop(const Kept& kept, const Shop& shop, Key<Fact> key) {
    for (const Fact& each : kept.change.put.template all<Fact>())
        if (each.key == key) return &each;
    return shop.find(key);
}

}  // namespace dyestead::gui
