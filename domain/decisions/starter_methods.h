// starter_methods.h - a method to begin with, so that nobody starts from an empty page. From then on it is the
// maker's own, to change as the vats teach.
//
// Common practice, no source: the steps, their temperatures, waits and amounts. Ours, no source: two degrees and
// half a pH either way where practice names one figure, and the minutes of the hands, all marked as about.
#pragma once

#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

// Keys, codes and heads are left for whoever records it; positions are set.
struct StarterMethod {
    Method method;
    std::vector<MethodStep> steps;
    std::vector<MethodUse> uses;
};

// Hot water on torn leaf of a plant that bears indigo, alkali, air, and settling.
StarterMethod hot_method_for_leaf(Key<Material> soda_ash);

}  // namespace dyestead
