// earns_best.h - what should be made with what there is: which bar brings most for each hour, and how many loaves of
// each bring most when hours, materials on the shelf and customers all come to an end?
//
// What a loaf brings: what its good bars leave of their shelf price after sales tax and fees (prices.h), less the
// materials at today's replacement price. Own powder on the shelf is paid for and worked for already: it counts as
// something there is only so much of, not as money or hours; what the kind earns when its colour must be grown again
// stands beside it. General running costs are paid whatever is made and do not count.
// Wanted of a kind: what was sold of it in the last 12 months, for the months asked about, less what is on the
// shelf or in cure, in whole loaves, the last one begun in full. No record says how many moulds there are, so they
// set no limit.
#pragma once

#include <optional>
#include <vector>

#include "domain/decisions/best_mix.h"
#include "domain/decisions/loaf_needs.h"
#include "domain/decisions/prices.h"

namespace dyestead {

struct EarnsBestTerms {
    int months = 3;               // to make for; the program's own default
    std::optional<double> hours;  // own hours there are for them; else as many as the last 12 months took at the bench
    // Of what there is too little: own hours unless a material is named.
    std::optional<Key<Material>> scarce;
};

enum class HoursFrom : std::uint8_t { nothing, asked, bench_records };

// One kind of bar. Everything is of a loaf.
struct BarEarns {
    Key<Material> bar;
    double good_bars = 0;
    std::optional<double> brings;        // empty: no price, no cost, or no recipe that says enough
    std::optional<double> hours;         // at the bench; empty: not poured in the verdict's months
    std::optional<double> takes;         // of the scarce thing: hours, or base units of the material
    std::optional<double> per_scarce;    // what one hour, or one base unit, brings; empty where it takes none
    std::optional<double> per_hour;      // of making
    std::optional<double> with_selling;  // an hour of making and selling
    std::optional<double> grown_again;   // of home colour: an hour with bed and vat, at what growing costs
    double sold_a_year = 0;              // bars
    double on_shelf = 0;                 // bars, in cure too
    int wanted = 0;                      // loaves
    double alone = 0;                    // loaves, in parts, were only the scarce thing short (contribution.h)
    int make = 0;                        // loaves, with all limits
    int make_if_ordered = 0;             // loaves, were everything bought that can be
    bool no_price = false;
    bool no_cost = false;
};

struct ShelfLimit {
    std::optional<Key<Material>> material;  // empty: own hours
    bool can_be_bought = false;             // not own powder, not hours
    double there = 0;                       // hours, or base units
    double step = 1;                        // what "one more" is: an hour; 100 g, 100 ml, one piece
    MixLimitUse use;
};

struct EarnsBest {
    int months = 0;
    HoursFrom hours_from{};
    std::optional<double> hours;
    std::optional<Key<Material>> scarce;
    double scarce_there = 0;     // hours, or base units
    std::vector<BarEarns> bars;  // what brings most for each bit of the scarce thing first
    std::vector<ShelfLimit> limits;
    double brings = 0;
    double brings_if_ordered = 0;
    bool proven = true;
};

// Requires: ledger == replay(shop, ledger.as_of).
EarnsBest earns_best(const Shop& shop, const Ledger& ledger, const EarnsBestTerms& terms = {});

}  // namespace dyestead
