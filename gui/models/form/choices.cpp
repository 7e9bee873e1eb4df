#include "gui/models/form/choices.h"

#include "domain/decisions/records.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

std::vector<Choice> people_choices(const Shop& shop) {
    return choices_of_kind<Person>(
        shop, {}, [](const Person& person) { return person.name; }, say("not noted"));
}

std::vector<Choice> material_choices(const Shop& shop, const std::function<bool(const Material&)>& wanted) {
    return choices_of_kind<Material>(shop, wanted, [](const Material& material) { return material.name; });
}

std::vector<Choice> colour_choices(const Shop& shop, const std::optional<std::string>& none) {
    return choices_of_kind<Colour>(
        shop, {}, [](const Colour& colour) { return colour.name; }, none);
}

std::vector<Choice> supplier_choices(const Shop& shop) {
    return choices_of_kind<Supplier>(shop, {}, [](const Supplier& supplier) { return supplier.name; });
}

std::vector<Choice> recipe_choices(const Shop& shop) {
    return choices_of_kind<Recipe>(shop, {}, [](const Recipe& recipe) { return recipe.name; });
}

std::string planting_name(const Shop& shop, const Planting& planting) {
    return say("{plant}, {bed}, sown {day}", arg("plant", reports::called(shop, planting.plant)),
               arg("bed", reports::called(shop, planting.bed)), arg("day", reports::shown_date(planting.sown)));
}

std::vector<Choice> planting_choices(const Shop& shop, Day day) {
    std::vector<const Planting*> growing;
    for (const Planting& planting : shop.all<Planting>()) {
        const bool ended = std::ranges::any_of(shop.all<PlantingEnd>(), [&](const PlantingEnd& end) {
            return end.planting == planting.key && end.date < day;
        });
        if (planting.sown <= day && !ended) growing.push_back(&planting);
    }
    std::ranges::stable_sort(growing, [](const auto* one, const auto* other) { return one->sown > other->sown; });
    std::vector<Choice> choices;
    for (const Planting* planting : growing)
        choices.push_back({KeyCodes{}.code_of(planting->key), planting_name(shop, *planting)});
    return choices;
}

std::vector<Choice> lot_choices(const Books& books, Key<Material> material) {
    std::vector<Choice> choices{{"", say("by rule")}};
    const Material* of = books.shop.find(material);
    if (of == nullptr) return choices;
    const Records records{books.shop, books.ledger};
    for (const Lot& lot : books.shop.all<Lot>()) {
        if (lot.material != material) continue;
        const LotState* state = records.state(lot.key);
        if (state == nullptr || state->left <= 0) continue;
        choices.push_back({KeyCodes{}.code_of(lot.key),
                           say("{lot}, {left} left", arg("lot", lot.code),
                               arg("left", reports::shown_quantity({kind_of(of->held_as), state->left})))});
    }
    return choices;
}

std::vector<TypedMeasure> measures_for(const Shop& shop, std::optional<Key<Material>> material) {
    std::vector<TypedMeasure> measures;
    for (const OwnMeasure& own : shop.all<OwnMeasure>())
        if (own.material && own.material == material) measures.push_back({own.name, own.amount});
    for (const OwnMeasure& own : shop.all<OwnMeasure>())
        if (!own.material) measures.push_back({own.name, own.amount});
    return measures;
}

std::function<const Material*(const std::function<const std::string&(std::string_view)>&, const Writing&)>
material_in_field(std::string material_id) {
    return [id = std::move(material_id)](const auto& texts, const Writing& writing) -> const Material* {
        const auto key = KeyCodes{}.key_of<Material>(texts(id));
        return key ? writing.shop().find(*key) : nullptr;
    };
}

}  // namespace dyestead::gui
