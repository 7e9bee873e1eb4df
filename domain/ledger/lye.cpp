#include "domain/ledger/lye.h"

#include <algorithm>
#include <cstdint>
#include <numeric>

#include "domain/facts/material_amount.h"
#include "domain/facts/recipe_amounts.h"

namespace dyestead {
namespace {

constexpr Wide product(Wide a, Wide b) {
    Wide result = 0;
    if (__builtin_mul_overflow(a, b, &result)) throw Overflow{};
    return result;
}

// Both >= 0, not both 0.
constexpr Wide greatest_common_divisor(Wide a, Wide b) {
    // Machines divide 64 bits many times as fast, and nearly all of a soap's numbers fit.
    while (b != 0 && (a > INT64_MAX || b > INT64_MAX)) {
        const Wide rest = a % b;
        a = b;
        b = rest;
    }
    if (b == 0) return a;
    return std::gcd(static_cast<std::int64_t>(a), static_cast<std::int64_t>(b));
}

// A number >= 0, so that saponification values of any denominators add up exactly. Brought to lowest terms only where
// it grows large: a common divisor takes longer than all else that is done to it.
struct Fraction {
    Wide top = 0;
    Wide bottom = 1;

    // Two products of such numbers, and their sum, stay in range.
    constexpr bool is_small() const { return top <= kSmall && bottom <= kSmall; }
    constexpr bool is_one() const { return top == 1 && bottom == 1; }
    static constexpr Wide kSmall = Wide{1} << 62;
};

[[gnu::noinline]] constexpr Fraction lowest(Wide top, Wide bottom) {
    if (bottom == 1) return {top, bottom};
    const Wide divisor = greatest_common_divisor(top, bottom);
    if (divisor == 1) return {top, bottom};
    return {top / divisor, bottom / divisor};
}

[[gnu::always_inline]] constexpr Fraction lowest_if_large(Wide top, Wide bottom) {
    const Fraction result{top, bottom};
    return result.is_small() ? result : lowest(top, bottom);
}

// Apart from what nearly always does: a number of this size is handed over in memory.
[[gnu::noinline]] constexpr Fraction product_of_large(Fraction a, Fraction b) {
    const Fraction left = lowest(a.top, b.bottom);
    const Fraction right = lowest(b.top, a.bottom);
    return {product(left.top, right.top), product(left.bottom, right.bottom)};
}

[[gnu::always_inline]] constexpr Fraction operator*(Fraction a, Fraction b) {
    if (b.is_one()) return a;
    if (a.is_small() && b.is_small()) return lowest_if_large(a.top * b.top, a.bottom * b.bottom);
    return product_of_large(a, b);
}

[[gnu::noinline]] constexpr Fraction sum_of_large(Fraction a, Fraction b) {
    Wide top = 0;
    const Wide shared = greatest_common_divisor(a.bottom, b.bottom);
    if (__builtin_add_overflow(product(a.top, b.bottom / shared), product(b.top, a.bottom / shared), &top))
        throw Overflow{};
    return lowest(top, product(a.bottom / shared, b.bottom));
}

[[gnu::always_inline]] constexpr Fraction operator+(Fraction a, Fraction b) {
    if (!a.is_small() || !b.is_small()) return sum_of_large(a, b);
    if (a.bottom == b.bottom) return lowest_if_large(a.top + b.top, a.bottom);
    return lowest_if_large(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
}

constexpr Fraction fraction(Ratio ratio) {
    return {ratio.top, ratio.bottom};
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

constexpr Fraction kWhole{1, 1};
// What one gram of potassium hydroxide is worth in grams of sodium hydroxide.
constexpr Fraction kSodiumForPotassium = lowest(kMolarMassOfSodiumHydroxide, kMolarMassOfPotassiumHydroxide);

Fraction inverse(Fraction fraction) {
    return {fraction.bottom, fraction.top};
}

// Hydroxide in one gram as sold.
Fraction purity(const Material* lye) {
    const bool said = lye != nullptr && lye->purity && lye->purity->top > 0;
    return said ? fraction(*lye->purity) : kWhole;
}

Alkali alkali_of(const Material& lye) {
    return lye.alkali.value_or(Alkali::sodium);
}

// What oils come to: their mass, the lye that turns all of them to soap, and what is not known.
struct Oils {
    LyeNeed need;
    Fraction mass;
    Fraction potash;  // micrograms of KOH that turn all of them to soap

    void add(const Material& oil, const Amount& amount, Fraction share = kWhole) {
        const auto whole = mass_of(oil, amount);
        if (!whole) add_once(need.without_mass, oil.key);
        if (!oil.saponification) add_once(need.without_saponification, oil.key);
        if (!whole) return;
        const Fraction weighed = Fraction{whole->in_base()} * share;
        mass = mass + weighed;
        if (!oil.saponification) return;
        potash = potash + weighed * fraction(*oil.saponification);
    }
    // Milligrams of NaOH at no superfat.
    Fraction all_lye() const { return potash * kSodiumForPotassium * Fraction{1, 1'000}; }
    bool known() const { return need.without_mass.empty() && need.without_saponification.empty(); }
};

bool is_oil(const Material* material) {
    return material != nullptr && material->purpose == Purpose::oil;
}

// The shop's lye of a kind: the one a batch last used, else the first on record.
const Material* lye_at_hand(const Shop& shop, Alkali alkali) {
    std::vector<const Material*> all;
    for (const Material& each : shop.all<Material>())
        if (each.purpose == Purpose::lye && alkali_of(each) == alkali) all.push_back(&each);
    if (all.size() < 2) return all.empty() ? nullptr : all.front();
    const Material* found = all.front();
    std::optional<Day> used;
    for (const BatchUse& use : shop.all<BatchUse>()) {
        const auto lye = std::ranges::find(all, use.material, &Material::key);
        const Batch* batch = lye == all.end() ? nullptr : shop.find(use.head);
        if (batch == nullptr || (used && *used > batch->date)) continue;
        found = *lye;
        used = batch->date;
    }
    return found;
}

bool has_possible_superfat(const Recipe& recipe) {
    return recipe.superfat >= Ratio{0, 1} && recipe.superfat < Ratio{1, 1};
}

// Milligrams of NaOH that leave the recipe's superfat. Nothing where that or the oils are not known.
std::optional<Fraction> power_for(const Oils& oils, const Recipe& recipe) {
    if (!has_possible_superfat(recipe) || !oils.known()) return std::nullopt;
    const Ratio superfat = recipe.superfat;
    return oils.all_lye() * fraction({superfat.bottom - superfat.top, superfat.bottom});
}

LyeNeed at(Oils oils, const Material* sodium, const Material* potassium_lye, const Recipe& recipe) {
    const std::optional<Fraction> power = power_for(oils, recipe);
    LyeNeed need = std::move(oils.need);
    need.oils = milligrams(oils.mass);
    const auto caution = [&](LyeCaution code) { need.cautions.push_back(code); };
    caution(LyeCaution::a_check_only);
    const Ratio concentration = recipe.lye_concentration;
    const Ratio potassium = recipe.potassium_share.value_or(Ratio{});
    const bool concentration_possible = concentration > Ratio{0, 1} && concentration <= Ratio{1, 1};
    if (!has_possible_superfat(recipe)) caution(LyeCaution::superfat_impossible);
    if (recipe.superfat.is_zero()) caution(LyeCaution::no_superfat);
    if (!concentration_possible) caution(LyeCaution::concentration_impossible);
    if (concentration_possible && concentration > kStrongestLye && potassium < Ratio{1, 1})
        caution(LyeCaution::stronger_than_dissolves);
    if (!power) return need;

    need.as_sodium = milligrams(*power);
    Fraction lye;
    const auto weigh = [&](LyePart& part, const Material* from, Fraction pure) {
        if (pure.top == 0) return;
        if (from != nullptr) part.from = from->key;
        const Fraction weighed = pure * inverse(purity(from));
        part.weighed = milligrams(weighed);
        lye = lye + weighed;
    };
    weigh(need.sodium, sodium, *power * fraction({potassium.bottom - potassium.top, potassium.bottom}));
    weigh(need.potassium, potassium_lye, *power * fraction(potassium) * inverse(kSodiumForPotassium));
    need.lye = milligrams(lye);
    if (concentration_possible)
        need.water = milligrams(lye * fraction({concentration.bottom - concentration.top, concentration.top}));
    return need;
}

// What went into a batch, with the share of what it was poured off from.
struct Weighed {
    Oils oils;
    Fraction lye;    // milligrams
    Fraction power;  // likewise, as pure sodium hydroxide
    std::vector<Key<Material>> lye_without_mass;

    void add(const Shop& shop, const LinesOf<BatchUse>& uses, const Batch& batch, Fraction share, int depth = 0) {
        for (const BatchUse* use : uses(batch.key)) {
            const Material* material = shop.find(use->material);
            if (is_oil(material)) oils.add(*material, use->amount, share);
            if (material != nullptr && material->purpose == Purpose::lye) add_lye(*material, use->amount, share);
        }
        constexpr int kDeepest = 4;  // poured off from what was poured off ...; ends a ring as well
        if (!batch.split_from || !batch.split_share || batch.split_share->top <= 0 || depth == kDeepest) return;
        const Batch* other = shop.find(*batch.split_from);
        if (other != nullptr && other->date <= batch.date)
            add(shop, uses, *other, share * fraction(*batch.split_share), depth + 1);
    }

private:
    void add_lye(const Material& material, const Amount& amount, Fraction share) {
        const auto mass = mass_of(material, amount);
        if (!mass) return add_once(lye_without_mass, material.key);
        const Fraction weighed = Fraction{mass->in_base()} * share;
        const Fraction pure = weighed * purity(&material);
        lye = lye + weighed;
        power = power + (alkali_of(material) == Alkali::potassium ? pure * kSodiumForPotassium : pure);
    }
};

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
    return at(std::move(oils), lye_at_hand(shop, Alkali::sodium), lye_at_hand(shop, Alkali::potassium), recipe);
}

LyeCheck lye_check(const Shop& shop, const Batch& batch) {
    return LyeChecks{shop}.of(batch);
}

LyeChecks::LyeChecks(const Shop& shop)
    : shop_{shop},
      uses_{shop},
      sodium_{lye_at_hand(shop, Alkali::sodium)},
      potassium_{lye_at_hand(shop, Alkali::potassium)} {}

LyeCheck LyeChecks::of(const Batch& batch) const {
    Weighed went_in;
    went_in.add(shop_, uses_, batch, kWhole);
    LyeCheck check;
    if (went_in.lye_without_mass.empty()) {
        check.weighed = milligrams(went_in.lye);
        check.as_sodium = milligrams(went_in.power);
    }
    const Recipe* recipe = shop_.find(batch.recipe);
    if (recipe == nullptr) return check;
    const bool none_left = went_in.oils.known() && check.as_sodium && !check.as_sodium->is_zero() &&
                           *check.as_sodium >= milligrams(went_in.oils.all_lye());
    check.called_for = at(std::move(went_in.oils), sodium_, potassium_, *recipe);
    auto& cautions = check.called_for.cautions;
    if (none_left && std::ranges::find(cautions, LyeCaution::no_superfat) == cautions.end())
        cautions.push_back(LyeCaution::no_superfat);
    const std::int64_t called = check.called_for.as_sodium.in_base();
    if (check.as_sodium && check.called_for.lye && called != 0)
        check.difference = Ratio{check.as_sodium->in_base() - called, called};
    for (const Key<Material> key : went_in.lye_without_mass) add_once(check.called_for.without_mass, key);
    return check;
}

std::optional<LyeBalance> LyeChecks::balance(const Batch& batch) const {
    Weighed went_in;
    went_in.add(shop_, uses_, batch, kWhole);
    const Recipe* recipe = shop_.find(batch.recipe);
    if (recipe == nullptr || !went_in.lye_without_mass.empty()) return std::nullopt;
    const auto power = power_for(went_in.oils, *recipe);
    if (!power) return std::nullopt;
    LyeBalance balance{milligrams(went_in.power), milligrams(*power)};
    if (balance.weighed.is_zero() || balance.called_for.is_zero()) return std::nullopt;
    balance.leaves_oil = !recipe->superfat.is_zero() && balance.weighed < milligrams(went_in.oils.all_lye());
    return balance;
}

bool LyeChecks::are_alike(const Batch& a, const Batch& b) const {
    const auto same = [](const BatchUse* one, const BatchUse* other) {
        return one->material == other->material && one->amount.quantity == other->amount.quantity &&
               one->amount.unit == other->amount.unit;
    };
    return a.recipe == b.recipe && !a.split_from && !b.split_from &&
           std::ranges::equal(uses_(a.key), uses_(b.key), same);
}

}  // namespace dyestead
