#include "domain/decisions/lye.h"

#include <algorithm>

#include "domain/facts/material_amount.h"
#include "domain/facts/recipe_amounts.h"

namespace dyestead {
namespace {

Wide product(Wide a, Wide b) {
    Wide result = 0;
    if (__builtin_mul_overflow(a, b, &result)) throw Overflow{};
    return result;
}

// Both >= 0, not both 0.
Wide greatest_common_divisor(Wide a, Wide b) {
    while (b != 0) {
        const Wide rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

// A number >= 0 in lowest terms, so that saponification values of any denominators add up exactly.
struct Fraction {
    Wide top = 0;
    Wide bottom = 1;
};

Fraction lowest(Wide top, Wide bottom) {
    const Wide divisor = greatest_common_divisor(top, bottom);
    return {top / divisor, bottom / divisor};
}

Fraction operator*(Fraction a, Fraction b) {
    const Fraction left = lowest(a.top, b.bottom);
    const Fraction right = lowest(b.top, a.bottom);
    return {product(left.top, right.top), product(left.bottom, right.bottom)};
}

Fraction operator+(Fraction a, Fraction b) {
    const Wide shared = greatest_common_divisor(a.bottom, b.bottom);
    Wide top = 0;
    if (__builtin_add_overflow(product(a.top, b.bottom / shared), product(b.top, a.bottom / shared), &top))
        throw Overflow{};
    return lowest(top, product(a.bottom / shared, b.bottom));
}

Fraction fraction(Ratio ratio) {
    return lowest(ratio.top, ratio.bottom);
}

Quantity milligrams(Fraction mass) {
    return Quantity::milligrams(scaled(mass.top, 1, mass.bottom));
}

// The mass of an amount, whatever the material is held in.
std::optional<Quantity> mass_of(const Material& material, const Amount& amount) {
    if (amount.quantity.kind() == Kind::mass) return amount.quantity;
    const auto held = as_held(material, amount);
    if (!held || held->kind() == Kind::mass) return held;
    if (held->kind() != Kind::volume || !material.density || material.density->is_zero()) return std::nullopt;
    return Quantity{Kind::mass, times(held->in_base(), *material.density)};
}

void add_once(std::vector<Key<Material>>& keys, Key<Material> key) {
    if (std::ranges::find(keys, key) == keys.end()) keys.push_back(key);
}

// What oils come to: their mass, the lye that turns all of them to soap, and what is not known.
struct Oils {
    LyeNeed need;
    Fraction all_lye;  // milligrams of NaOH at no superfat

    void add(const Material& oil, const Amount& amount) {
        const auto mass = mass_of(oil, amount);
        if (!mass) add_once(need.without_mass, oil.key);
        if (!oil.saponification) add_once(need.without_saponification, oil.key);
        if (mass) need.oils += *mass;
        if (!mass || !oil.saponification) return;
        const Fraction grams = lowest(mass->in_base(), 1'000);
        const Fraction molar = lowest(kMolarMassOfSodiumHydroxide, kMolarMassOfPotassiumHydroxide);
        all_lye = all_lye + grams * fraction(*oil.saponification) * molar;
    }
    bool known() const { return need.without_mass.empty() && need.without_saponification.empty(); }
};

bool is_oil(const Material* material) {
    return material != nullptr && material->purpose == Purpose::oil;
}

LyeNeed at(Oils oils, const Recipe& recipe) {
    const bool oils_known = oils.known();
    LyeNeed need = std::move(oils.need);
    const auto caution = [&](LyeCaution code) { need.cautions.push_back(code); };
    caution(LyeCaution::a_check_only);
    const Ratio superfat = recipe.superfat;
    const Ratio concentration = recipe.lye_concentration;
    const bool superfat_possible = superfat >= Ratio{0, 1} && superfat < Ratio{1, 1};
    const bool concentration_possible = concentration > Ratio{0, 1} && concentration <= Ratio{1, 1};
    if (!superfat_possible) caution(LyeCaution::superfat_impossible);
    if (superfat.is_zero()) caution(LyeCaution::no_superfat);
    if (!concentration_possible) caution(LyeCaution::concentration_impossible);
    if (concentration_possible && concentration > kStrongestLye) caution(LyeCaution::stronger_than_dissolves);
    if (!superfat_possible || !oils_known) return need;

    const Fraction lye = oils.all_lye * fraction({superfat.bottom - superfat.top, superfat.bottom});
    need.lye = milligrams(lye);
    if (concentration_possible)
        need.water = milligrams(lye * fraction({concentration.bottom - concentration.top, concentration.top}));
    return need;
}

}  // namespace

LyeNeed lye_need(const Shop& shop, const Recipe& recipe) {
    Oils oils;
    for (const auto& part : shop.all<RecipePart>()) {
        if (part.head != recipe.key) continue;
        const Material* material = shop.find(part.material);
        if (!is_oil(material)) continue;
        if (const auto amount = part_amount(recipe, part))
            oils.add(*material, *amount);
        else
            add_once(oils.need.without_mass, material->key);
    }
    return at(std::move(oils), recipe);
}

LyeCheck lye_check(const Shop& shop, const Batch& batch) {
    Oils oils;
    LyeCheck check{.called_for = {}, .weighed = Quantity::milligrams(0), .difference = {}};
    std::vector<Key<Material>> lye_without_mass;
    for (const auto& use : shop.all<BatchUse>()) {
        if (use.head != batch.key) continue;
        const Material* material = shop.find(use.material);
        if (is_oil(material)) oils.add(*material, use.amount);
        if (material == nullptr || material->purpose != Purpose::lye) continue;
        const auto mass = mass_of(*material, use.amount);
        if (!mass) add_once(lye_without_mass, material->key);
        if (mass && check.weighed) *check.weighed += *mass;
        if (!mass) check.weighed.reset();
    }
    const Recipe* recipe = shop.find(batch.recipe);
    if (recipe == nullptr) return check;
    const bool none_left =
        oils.known() && check.weighed && !check.weighed->is_zero() && *check.weighed >= milligrams(oils.all_lye);
    check.called_for = at(std::move(oils), *recipe);
    auto& cautions = check.called_for.cautions;
    if (none_left && std::ranges::find(cautions, LyeCaution::no_superfat) == cautions.end())
        cautions.push_back(LyeCaution::no_superfat);
    if (check.weighed && check.called_for.lye && !check.called_for.lye->is_zero()) {
        const std::int64_t called = check.called_for.lye->in_base();
        check.difference = Ratio{check.weighed->in_base() - called, called};
    }
    for (const Key<Material> key : lye_without_mass) add_once(check.called_for.without_mass, key);
    return check;
}

}  // namespace dyestead
