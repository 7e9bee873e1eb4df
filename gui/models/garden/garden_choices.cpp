#include "gui/models/garden/garden_choices.h"

#include "gui/models/form/named.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

std::vector<Choice> plant_choices(const Shop& shop) {
    return choices_of_kind<Plant>(shop, {}, [](const Plant& plant) { return plant.name; });
}

std::vector<Choice> bed_choices(const Shop& shop) {
    return choices_of_kind<Bed>(shop, {}, [](const Bed& bed) { return bed.name; });
}

std::vector<Choice> plantings_to_choose(const Writing& writing, std::optional<Key<Planting>> also) {
    std::vector<Choice> choices = planting_choices(writing.shop(), writing.day);
    const Planting* planting = also ? writing.shop().find(*also) : nullptr;
    if (planting == nullptr) return choices;
    const std::string code = KeyCodes{}.code_of(*also);
    if (std::ranges::find(choices, code, &Choice::code) == choices.end())
        choices.push_back({code, planting_name(writing.shop(), *planting)});
    return choices;
}

bool is_seed(const Material& material) {
    return material.kind == MaterialKind::seed;
}

bool is_garden_goods(const Material& material) {
    return is_seed(material) || material.purpose == Purpose::feed || material.purpose == Purpose::water ||
           material.purpose == Purpose::other;
}

std::vector<Choice> harvest_choices(const Shop& shop) {
    return material_choices(shop, [](const Material& material) { return material.kind == MaterialKind::harvest; });
}

Measuring in_square_metres(const FieldHow::Texts& /*texts*/, const Writing& /*writing*/) {
    return {.kind = Kind::area};
}

Measuring in_weight(const FieldHow::Texts& /*texts*/, const Writing& writing) {
    return {.kind = Kind::mass, .own = measures_for(writing.shop(), std::nullopt)};
}

double square_metres(std::int64_t square_centimetres) {
    return static_cast<double>(square_centimetres) / 1e4;
}

std::string planting_in_short(const Shop& shop, Key<Planting> key) {
    const Planting* planting = shop.find(key);
    if (planting == nullptr) return {};
    return say("{plant}, {bed}", arg("plant", reports::called(shop, planting->plant)),
               arg("bed", reports::called(shop, planting->bed)));
}

Key<Lot> new_lot(const Material& material, Day day, const Writing& writing, Kept& kept) {
    std::vector<std::string> taken;
    for (const Lot& lot : kept.change.put.all<Lot>()) taken.push_back(lot.code);
    Lot lot;
    lot.key = writing.new_key<Lot>();
    lot.code = free_code<Lot>(writing.shop(), code_from(material.name) + "-" + print(day), taken);
    lot.material = material.key;
    kept.change.put.all<Lot>().push_back(lot);
    return lot.key;
}

}  // namespace dyestead::gui
