// steps_as_done.h - how did the time at a vat go over its steps? As noted step by step; where it was told only
// for the whole vat, shared over the steps of its method by the method's own minutes.
#pragma once

#include <string>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

struct StepDone {
    int position = 0;  // in the vat as noted, or in the method
    std::string what;
    Minutes hands_on{};
    Minutes waiting{};
    bool from_method = false;
};

// Their times add up to what was noted or told; empty where it was told for the whole vat and no method
// parts it. A method without minutes of its own shares equally.
std::vector<StepDone> steps_as_done(const Shop& shop, const Vat& vat);

// How often a step of the method was done at the vat: what is done more than once are the washes, which the
// maker may have counted.
int times_done(const Vat& vat, const MethodStep& step);

}  // namespace dyestead
