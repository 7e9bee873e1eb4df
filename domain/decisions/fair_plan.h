// fair_plan.h - how many of each kind to take to a fair, how many must be sold to cover it, and how did one go?
//
// One more bar after n is worth (r - v) P(D > n) - o P(D <= n): r what it brings here after tax and fees, v what it
// costs to make again without own time (it can be sold another day), o what carrying it in vain costs. Demand per
// kind from the fairs stood to their end (demand.h); exposure is their open hours times how busy a fair of that name
// is. Bars of all kinds take the same room. The handling of a bar brought home and the share damaged on the way are
// our own defaults, no source.
#pragma once

#include <optional>
#include <vector>

#include "domain/decisions/demand.h"
#include "domain/decisions/records.h"
#include "domain/decisions/tin.h"

namespace dyestead {

struct FairTerms {
    std::optional<int> room;  // bars that fit on the table and in the van
    int at_least = 0;         // of each kind there is, to make a display
    double handling = 0.02;   // money a bar brought home
    double damaged = 0.01;    // share of bars brought home
    double usual_hours = 6;   // where a fair's open hours are not on record
};

struct TakeBars {
    Key<Material> bar;
    int there = 0;               // cured by the day, in the shop now
    int held = 0;                // on hold: never packed
    int in_cure = 0;             // not ready by the day
    std::optional<Day> pour_by;  // the last day on which a loaf poured as the newest one is still ready
    int take = 0;
    double expected = 0;         // wanted
    double expected_sold = 0;    // of those taken
    int days_on_record = 0;      // fairs it was taken to
    bool at_least_only = false;  // sold out every time: what was wanted is not known
    double brings = 0;           // r
    double keeps = 0;            // v
    std::vector<Key<Lot>> lots;  // to pack, the first cured first
    bool no_price = false;
    bool no_cost = false;  // v taken as nought
};

struct FairPlan {
    Key<Fair> fair;
    double hours = 0;
    double busy = 1;  // how busy fairs of this name were, beside all; 1 for one not stood before
    bool stood_before = false;
    std::vector<TakeBars> bars;             // by name
    double fixed = 0;                       // fee and travel
    double own_hours = 0;                   // at the last fair of this name, else the usual
    std::optional<double> contribution;     // of a bar, over the kinds taken, as they are expected to sell
    std::optional<double> break_even;       // bars, without own time
    std::optional<double> break_even_full;  // with the hours at the stall paid at target
    double expected_bars = 0;
    double expected_earned = 0;  // after making and the fair, own time not paid
};

// Requires: the fair is on record (a coming one, noted by ledger.as_of).
FairPlan fair_plan(const Shop& shop, const Ledger& ledger, Key<Fair> fair, const FairTerms& terms = {});

// The plan as it stood the day before, from what was on record then: what came of the fair is held against it.
// Requires: the fair is on record.
FairPlan plan_before(const Shop& shop, const Ledger& ledger, Key<Fair> fair);

// The first fair from ledger.as_of on.
std::optional<Key<Fair>> next_fair(const Shop& shop, Day as_of);

struct FairResult {
    Key<Fair> fair;
    struct Line {
        Key<Material> bar;
        int taken = 0;
        int back = 0;
        double price = 0;
        double takings() const { return price * (taken - back); }
    };
    std::vector<Line> lines;
    int sold = 0;
    Tin tin;
    double by_price = 0;  // bars at their prices, reductions and bundles off
    double takings = 0;   // counted cash and cards where counted, else by price
    double fees = 0;
    double fixed = 0;
    double making_cash = 0;  // of the bars sold, as they were made
    double making_full = 0;
    double making_hours = 0;
    double own_hours = 0;  // at the stall
    double left = 0;       // for the hours: takings without sales tax, less fees, stall, travel and making
    // (a) for an hour at the stall, the making paid at target; (b) for an hour of making and selling together.
    std::optional<double> per_stall_hour;
    std::optional<double> target;  // what an hour of the one who stands there by default is to bring
    std::optional<double> per_hour;
};

FairResult fair_result(const Shop& shop, const Ledger& ledger, Key<Fair> fair);
// The last one stood or cut short by ledger.as_of.
std::optional<Key<Fair>> last_fair(const Shop& shop, Day as_of);

}  // namespace dyestead
