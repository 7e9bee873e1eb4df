// best_mix.h - when several things run short at once, how many of each kind bring most, what stops there being more,
// and what would more of each thing bring?
//
// A whole-number program solved by GLPK: the most of sum(contribution x made), with made a whole number from nought
// to what is wanted of the kind, and sum(takes x made) no more than there is of each thing. What more of a thing
// brings is told by the same program in parts of a unit (whole units move in jumps, and a little more often brings
// nothing until there is enough for one more): solved again with one step more. Doubles: a decision, not books.
#pragma once

#include <vector>

namespace dyestead {

struct MixKind {
    double contribution = 0;  // a unit; what brings nothing is not made
    int at_most = 0;          // wanted
};

struct MixLimit {
    double available = 0;
    std::vector<double> takes;  // a unit of each kind
    double step = 1;            // how much more is asked about
};

struct MixLimitUse {
    double used = 0;
    double left = 0;
    double step_brings = 0;          // in parts of a unit; never below nought
    std::vector<std::size_t> stops;  // kinds still wanted of which there is not enough left for one more
};

struct Mix {
    std::vector<int> made;  // of each kind, in the order given
    double brings = 0;
    double brings_in_parts = 0;       // the most if parts of a unit could be made: never less
    bool proven = true;               // false: the search was ended early; there may be better
    std::vector<MixLimitUse> limits;  // in the order given
    std::vector<double> wanted_more;  // what wanting one more of each kind would bring, in parts of a unit
};

// Requires: every number finite and no `takes` below nought; a `takes` for each kind.
Mix best_mix(const std::vector<MixKind>& kinds, const std::vector<MixLimit>& limits);

}  // namespace dyestead
