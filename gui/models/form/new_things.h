// new_things.h - a name typed where a thing is chosen makes the thing: the form need not be left to record it first.
#pragma once

#include <string>

#include "gui/models/form/field_values.h"
#include "gui/models/form/form.h"

namespace dyestead::gui {

// The fact of that key, else of that name (whatever the case of A to Z), among the records and among what the form is
// about to add. Null: there is none, and the text is a new name.
const Material* material_typed(const std::string& text, const Writing& writing, const Kept& kept);
const Supplier* supplier_typed(const std::string& text, const Writing& writing, const Kept& kept);

// Puts a new one into the change.
Key<Material> add_material(const std::string& name, MaterialKind kind, std::optional<Purpose> purpose, Kind held,
                           const Writing& writing, Kept& kept);
Key<Supplier> add_supplier(const std::string& name, const Writing& writing, Kept& kept);
// A jar of it: "olive-oil-2026-07-04".
Key<Lot> add_lot(const std::string& name, Key<Material> material, Day day, const Writing& writing, Kept& kept);

}  // namespace dyestead::gui
