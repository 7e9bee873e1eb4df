// tin.h - what should have been in the tin after a fair, and by how much is it off?
// Expected = float + bars sold at their prices - reductions - what bundles cost less - card takings.
// The difference is shown as it is and spread over nothing.
#pragma once

#include "domain/decisions/records.h"

namespace dyestead {

struct Tin {
    Money change_float;
    Money at_prices;  // all bars sold, at what was asked for each
    Money let_off;    // reductions and bundles; a bundle against its bars at the mean price of what was sold
    Money card;
    Money expected;                   // float included
    std::optional<Money> counted;     // float included; nothing: not counted
    std::optional<Money> difference;  // counted - expected
    bool price_missing = false;       // some bars had no price on record, so less is expected than should be
};

Tin tin(const Records& records, const Fair& fair);

}  // namespace dyestead
