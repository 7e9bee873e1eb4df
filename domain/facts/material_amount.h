// material_amount.h - how much of a material is an amount, in the kind the material is held in?
// A litre of oil becomes a mass by its density, a spoon of powder by its spoon density.
#pragma once

#include <optional>

#include "domain/facts/cupboard.h"

namespace dyestead {

constexpr Kind kind_of(HeldAs held) {
    switch (held) {
        case HeldAs::mass: return Kind::mass;
        case HeldAs::volume: return Kind::volume;
        case HeldAs::count: return Kind::count;
    }
    return Kind::mass;
}

// Nothing when the amount is of another kind and no density leads from one to the other.
// One g per ml is one mg per microlitre, so a density scales base units as it stands.
constexpr std::optional<Quantity> as_held(const Material& material, const Amount& amount) {
    const Kind held = kind_of(material.held_as);
    const Kind stated = amount.quantity.kind();
    if (stated == held) return amount.quantity;
    const bool spoon = amount.unit == Unit::tsp || amount.unit == Unit::tbsp || amount.unit == Unit::us_tsp ||
                       amount.unit == Unit::us_tbsp || amount.unit == Unit::us_cup;
    const auto density = spoon && material.spoon_density ? material.spoon_density : material.density;
    if (!density || density->is_zero()) return std::nullopt;
    if (stated == Kind::volume && held == Kind::mass) return Quantity{held, times(amount.quantity.in_base(), *density)};
    if (stated == Kind::mass && held == Kind::volume)
        return Quantity{held, scaled(amount.quantity.in_base(), density->bottom, density->top)};
    return std::nullopt;
}

}  // namespace dyestead
