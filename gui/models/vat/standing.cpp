#include "gui/models/vat/standing.h"

#include <algorithm>
#include <set>

#include "domain/decisions/records.h"

namespace dyestead::gui {

std::vector<const Vat*> standing_vats(const Shop& shop, Day day) {
    std::set<Key<Vat>> dried;
    for (const DryingVat& line : shop.all<DryingVat>()) {
        const Drying* drying = shop.find(line.head);
        if (drying != nullptr && drying->date <= day) dried.insert(line.vat);
    }
    std::vector<const Vat*> standing;
    for (const Vat& vat : shop.all<Vat>())
        if (vat.date <= day && !dried.contains(vat.key)) standing.push_back(&vat);
    std::ranges::stable_sort(standing, {}, [](const Vat* vat) { return vat->date; });
    return standing;
}

double harvest_kg(const Shop& shop, const Vat& vat) {
    double kg = 0;
    for (const VatUse& use : shop.all<VatUse>()) {
        if (use.head != vat.key) continue;
        const Material* material = shop.find(use.material);
        if (material == nullptr || material->kind != MaterialKind::harvest) continue;
        if (const auto held = as_held(*material, use.amount)) kg += grams(*material, held->in_base()).value_or(0) / 1e3;
    }
    return kg;
}

const Material* powder_of(const Shop& shop, Key<Colour> colour) {
    const auto& all = shop.all<Material>();
    const auto found = std::ranges::find_if(all, [&](const Material& material) {
        return material.kind == MaterialKind::pigment && material.colour == colour;
    });
    return found == all.end() ? nullptr : &*found;
}

}  // namespace dyestead::gui
