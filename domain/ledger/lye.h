// lye.h - how much lye and water does a recipe call for, and was that what went into a batch?
//
// Lye = sum over the oils (mass * saponification value) * (1 - superfat), as potassium hydroxide, for the
// saponification value is milligrams of KOH to a gram of oil. The share of it that is not to be potassium
// is smaller by the ratio of the molar masses: KOH 39.0983 + 15.999 + 1.008, NaOH 22.98977 + 15.999 +
// 1.008 (IUPAC abridged atomic weights, from memory). A lye sold at 90 % is weighed in heavier by that.
// Water = lye as weighed * (1 - c) / c for a lye concentration c. All of it is reckoned in whole numbers
// and rounded once, to the milligram. A check, not a licence: the value on the supplier's own sheet wins.
#pragma once

#include <optional>
#include <vector>

#include "domain/facts/lines_of.h"

namespace dyestead {

inline constexpr std::int64_t kMolarMassOfPotassiumHydroxide = 5'610'530;  // hundred-thousandths of g/mol
inline constexpr std::int64_t kMolarMassOfSodiumHydroxide = 3'999'677;

// The most sodium hydroxide that dissolves at 20 degrees Celsius, as a share of the lye's mass
// (Great Soviet Encyclopedia: 52.2 %). Not said of a lye that is all potassium, of which more dissolves.
inline constexpr Ratio kStrongestLye{522, 1'000};

enum class LyeCaution : std::uint8_t {
    a_check_only,              // always there: the supplier's own value wins
    no_superfat,               // no oil is left over, so the bar may burn
    stronger_than_dissolves,   // see kStrongestLye
    superfat_impossible,       // all of the oil, or more, is to be left over: no lye can be said
    concentration_impossible,  // not above 0 and up to 1: no water can be said
};

// One of the two hydroxides. `from`: the lye it is weighed out of, whose purity counts; nothing where
// none such is on record, and then it is taken as pure.
struct LyePart {
    Quantity weighed;
    std::optional<Key<Material>> from;
};

// Masses in milligrams.
struct LyeNeed {
    Quantity oils;
    std::optional<Quantity> lye;  // sodium and potassium together, as weighed; nothing while an oil is listed below
    std::optional<Quantity> water;
    LyePart sodium;                                     // nought while there is no lye
    LyePart potassium;                                  // likewise
    Quantity as_sodium;                                 // all of the lye, as pure sodium hydroxide
    std::vector<Key<Material>> without_saponification;  // oils with no such value on record
    std::vector<Key<Material>> without_mass;            // measured by volume or count, and no density on record
    std::vector<LyeCaution> cautions;
};

// For one loaf. Where the shop has several lyes of a kind, the one a batch last used.
// Throws: Overflow for values far outside any soap (fractions of eleven digits, a thousand tonnes).
LyeNeed lye_need(const Shop& shop, const Recipe& recipe);

struct LyeCheck {
    LyeNeed called_for;                 // by the oils weighed in, at the recipe's superfat
    std::optional<Quantity> weighed;    // lye weighed in, milligrams; nothing while its mass is not known
    std::optional<Quantity> as_sodium;  // its power, as pure sodium hydroxide; likewise
    std::optional<Ratio> difference;    // of powers: (weighed - called for) / called for; above zero: too much
};

// How strong the lye of a batch was and should have been, both as pure sodium hydroxide.
struct LyeBalance {
    Quantity weighed;
    Quantity called_for;
    bool leaves_oil = true;  // some of the oil is over, in the recipe and in the pot
};

// Of a batch poured off from another, with its share of what that took.
// `called_for.cautions` holds no_superfat where the lye weighed in leaves none.
LyeCheck lye_check(const Shop& shop, const Batch& batch);

// The same for many batches.
class LyeChecks {
public:
    explicit LyeChecks(const Shop& shop);
    LyeCheck of(const Batch& batch) const;
    // The powers alone, without what each lye and the water come to; nothing while they cannot be told, or are nought.
    std::optional<LyeBalance> balance(const Batch& batch) const;
    // Whether the same of the same went into both, so that one balance serves them; false where either was poured off.
    bool are_alike(const Batch& a, const Batch& b) const;

private:
    const Shop& shop_;
    LinesOf<BatchUse> uses_;
    const Material* sodium_;  // at hand; null: none
    const Material* potassium_;
};

}  // namespace dyestead
