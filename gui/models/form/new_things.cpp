#include "gui/models/form/new_things.h"

#include "domain/text/same_name.h"

namespace dyestead::gui {

namespace {

template <class Fact>
const Fact* thing_typed(const std::string& text, const Writing& writing, const Kept& kept) {
    if (trimmed(text).empty()) return nullptr;
    if (const auto key = KeyCodes{}.key_of<Fact>(text))
        if (const Fact* found = writing.shop().find(*key)) return found;
    for (const auto* list : {&writing.shop().all<Fact>(), &kept.change.put.all<Fact>()})
        for (const Fact& fact : *list)
            if (same_name(trimmed(fact.name), trimmed(text))) return &fact;
    return nullptr;
}

template <class Fact>
std::string fresh_code(const std::string& stem, const Writing& writing, const Kept& kept) {
    std::vector<std::string> taken;
    for (const Fact& fact : kept.change.put.all<Fact>()) taken.push_back(fact.code);
    return free_code<Fact>(writing.shop(), stem, taken);
}

}  // namespace

const Material* material_typed(const std::string& text, const Writing& writing, const Kept& kept) {
    return thing_typed<Material>(text, writing, kept);
}

const Supplier* supplier_typed(const std::string& text, const Writing& writing, const Kept& kept) {
    return thing_typed<Supplier>(text, writing, kept);
}

Key<Material> add_material(const std::string& name, MaterialKind kind, std::optional<Purpose> purpose, Kind held,
                           const Writing& writing, Kept& kept) {
    Material material;
    material.key = writing.new_key<Material>();
    material.code = fresh_code<Material>(code_from(name), writing, kept);
    material.name = std::string{trimmed(name)};
    material.kind = kind;
    material.purpose = purpose;
    material.held_as = held == Kind::volume ? HeldAs::volume : held == Kind::count ? HeldAs::count : HeldAs::mass;
    if (purpose == Purpose::lye) material.caution = Caution::lye;
    if (purpose == Purpose::alkali || purpose == Purpose::mordant) material.caution = Caution::dust;
    kept.change.put.all<Material>().push_back(material);
    return material.key;
}

Key<Supplier> add_supplier(const std::string& name, const Writing& writing, Kept& kept) {
    Supplier supplier;
    supplier.key = writing.new_key<Supplier>();
    supplier.code = fresh_code<Supplier>(code_from(name), writing, kept);
    supplier.name = std::string{trimmed(name)};
    kept.change.put.all<Supplier>().push_back(supplier);
    return supplier.key;
}

Key<Lot> add_lot(const std::string& name, Key<Material> material, Day day, const Writing& writing, Kept& kept) {
    Lot lot;
    lot.key = writing.new_key<Lot>();
    lot.code = fresh_code<Lot>(code_from(name) + "-" + print(day), writing, kept);
    lot.material = material;
    kept.change.put.all<Lot>().push_back(lot);
    return lot.key;
}

}  // namespace dyestead::gui
