// sowing.h - how much of each dye plant must be sown for the bars wanted, on which ground, with how much seed, and by
// when?
//
// Back from the bars: grams of the colour's standard they take (dose), over what a kilogram of harvest gives of that
// (powder times strength), over what a square metre gives of harvest, times seed to a square metre. Each step has a
// bad, a usual and a good year: of one's own records the worst season, all seasons together (ratio of totals) and the
// best, failures in; where there are none, what the method, else the plant, states. A bad year takes the worst
// of every step together, which is worse than most bad years are.
// Strength and yield are tied (more powder is weaker), so the worst and best season are those of their product.
// Seed = rate x area / share that comes up x reserve. The share where no try is on record, and the reserve, are the
// program's own defaults, no source; both can be set (SowingRule). So can the frosts of a usual year: an annual is not
// sown outdoors before the last, and must be cut before the first.
// Doubles: a forecast, not books.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "domain/decisions/year_range.h"
#include "domain/facts/shop.h"
#include "domain/ledger/ledger.h"

namespace dyestead {

struct SowingTerms {
    std::map<Key<Colour>, int> bars{};  // wanted; of a colour not named: as many as were sold in the last 12 months
    double germination = 0.8;           // where no try and no setting says it; the program's own default
    double reserve = 1.2;               // where no setting says it: for slugs and gaps; the program's own default
};

enum class SowingGap : std::uint8_t {
    no_plant,           // no plant on record gives the colour
    no_bars,            // none sold, none asked for
    no_dose,            // no recipe for bars of the own colour states one
    no_yield,           // no vat finished, and no method states what comes
    nothing_came,       // every vat on record gave nothing
    strength_untested,  // supposed
    no_harvest_figure,  // no harvest on record, and the plant states none by weight
    nothing_grew,       // every planting on record gave nothing
    no_seed_rate,       // nor seed used before
    seed_dead,          // of the seed on the shelf none came up
    no_sowing_day,      // no sowing and no harvest on record
};

struct SeedNeed {
    SowingFrom rate_from = SowingFrom::nothing;
    Kind kind{};                   // by weight or by number
    double per_m2 = 0;             // base units
    std::optional<double> coming;  // the share that comes up; empty where the rate is what was sown before
    SowingFrom coming_from = SowingFrom::nothing;
    double reserve = 1;
    SowingFrom reserve_from = SowingFrom::nothing;
    YearRange of;                         // base units, for the ground of such a year
    std::optional<Key<Material>> seed;    // what was sown of the plant before
    std::optional<double> usual_as_held;  // base units of the seed as it is held, for a usual year
    double there = 0;                     // base units, good on the day of sowing
    std::optional<double> to_buy;         // base units, for a usual year
};

enum class SowDayFrom : std::uint8_t {
    nothing,
    usual_cut,   // back from the usual first cut
    last_sown,   // the day it was sown last
    last_frost,  // nothing on record says: when the last frost is usually over
};

struct SowingDays {
    std::optional<Day> sow_by;
    SowDayFrom from = SowDayFrom::nothing;
    std::optional<Day> last_frost;   // annuals, where it is set: before it, under cover only
    std::optional<Day> first_frost;  // annuals, where it is set: after the sowing
    std::optional<Day> last_chance;  // annuals: for one cut before the season closes, as in the year it closed first,
                                     // or before the first frost
    bool frost_closes = false;       // the frost it is
    std::optional<Day> first_cut;    // as usual
    std::optional<Day> powder_dry;
    std::optional<Day> bars_cured;
};

// What stands already and is ripe at the next harvest.
struct StandingHarvest {
    int year = 0;
    std::optional<Day> powder_dry;  // as usual
    double m2 = 0;
    YearRange bars;
};

struct ColourSowing {
    Key<Colour> colour;
    std::optional<Key<Plant>> plant;  // of several, the one most was harvested of
    bool other_plants = false;
    double bars = 0;
    SowingFrom bars_from = SowingFrom::nothing;
    std::optional<double> dose;  // g of the standard in a bar
    SowingFigure powder_per_kg;  // g
    SowingFigure strength;       // g of the standard in one g
    SowingFigure shade_per_kg;   // g of the standard
    SowingFigure kg_per_m2;
    YearRange powder;   // g
    YearRange harvest;  // kg
    YearRange area;     // m2
    std::optional<SeedNeed> seed;
    SowingDays days;
    StandingHarvest standing;
    // What is there, and what stands, last until the powder of the sowing after this one is dry.
    bool can_wait = false;
    // Bars at that rate between the last of the powder and the next that is dry: bought colour, or none.
    std::optional<double> bars_without;
    std::optional<double> bars_in_stock;  // what the powder on the shelf would colour
    std::optional<Day> stock_lasts;       // at the bars wanted; empty: for years, or none wanted
    double free_m2 = 0;                   // of all beds on the day of sowing
    std::optional<double> brings_per_m2;  // a season: money more than buying the colour in, own hours not counted
    std::optional<double> ground_given;   // where the beds are too small for all
    std::vector<SowingGap> missing;
};

struct Sowing {
    std::vector<ColourSowing> colours;  // the first to sow first
    double bed_m2 = 0;                  // of all beds
    double free_m2 = 0;                 // by the last sowing day
    double wanted_m2 = 0;               // for usual years
    bool too_small = false;
};

// Requires: ledger == replay(shop, ledger.as_of).
Sowing sowing(const Shop& shop, const Ledger& ledger, const SowingTerms& terms = {});

}  // namespace dyestead
