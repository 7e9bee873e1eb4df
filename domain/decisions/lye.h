// lye.h - how much lye and water does a recipe call for, and was that what went into a batch?
//
// Lye = sum over the oils (mass * saponification value) * (NaOH / KOH) * (1 - superfat), as solid
// sodium hydroxide; water = lye * (1 - c) / c for a lye concentration c. The saponification value is
// milligrams of KOH to a gram of oil, so the lye is smaller by the ratio of the molar masses:
// KOH 39.0983 + 15.999 + 1.008, NaOH 22.98977 + 15.999 + 1.008 (IUPAC abridged atomic weights, from
// memory). All of it is reckoned in whole numbers and rounded once, to the milligram.
// A check, not a licence: the value on the supplier's own sheet wins.
#pragma once

#include <optional>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

inline constexpr std::int64_t kMolarMassOfPotassiumHydroxide = 5'610'530;  // hundred-thousandths of g/mol
inline constexpr std::int64_t kMolarMassOfSodiumHydroxide = 3'999'677;

// The most sodium hydroxide that dissolves at 20 degrees Celsius, as a share of the lye's mass
// (Great Soviet Encyclopedia: 52.2 %).
inline constexpr Ratio kStrongestLye{522, 1'000};

enum class LyeCaution : std::uint8_t {
    a_check_only,              // always there: the supplier's own value wins
    no_superfat,               // no oil is left over, so the bar may burn
    stronger_than_dissolves,   // see kStrongestLye
    superfat_impossible,       // all of the oil, or more, is to be left over: no lye can be said
    concentration_impossible,  // not above 0 and up to 1: no water can be said
};

// Masses in milligrams.
struct LyeNeed {
    Quantity oils;
    std::optional<Quantity> lye;  // nothing while an oil is listed below
    std::optional<Quantity> water;
    std::vector<Key<Material>> without_saponification;  // oils with no such value on record
    std::vector<Key<Material>> without_mass;            // measured by volume or count, and no density on record
    std::vector<LyeCaution> cautions;
};

// For one loaf.
// Throws: Overflow for values far outside any soap (fractions of eleven digits, a thousand tonnes).
LyeNeed lye_need(const Shop& shop, const Recipe& recipe);

struct LyeCheck {
    LyeNeed called_for;               // by the oils weighed in, at the recipe's superfat
    std::optional<Quantity> weighed;  // lye weighed in, milligrams; nothing while its mass is not known
    std::optional<Ratio> difference;  // (weighed - called for) / called for; above zero: too much lye
};

// `called_for.cautions` holds no_superfat where the lye weighed in leaves none.
LyeCheck lye_check(const Shop& shop, const Batch& batch);

}  // namespace dyestead
