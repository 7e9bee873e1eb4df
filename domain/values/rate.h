// rate.h - a price as it was quoted: so much money for so much of something (38.40 for 5 l).
// Never reduced to money per base unit. Rate times quantity is the only road from a price to an
// amount; rounded half away from zero.
#pragma once

#include "domain/values/money.h"
#include "domain/values/quantity.h"

namespace dyestead {

struct Rate {
    Money amount;
    Quantity per;  // > 0
    friend constexpr bool operator==(const Rate&, const Rate&) = default;
};

// Throws: KindsMixed when the rate is for another kind of amount.
constexpr Money operator*(const Rate& rate, Quantity quantity) {
    if (rate.per.kind() != quantity.kind()) throw KindsMixed{};
    return Money::millionths(scaled(rate.amount.in_millionths(), quantity.in_base(), rate.per.in_base()));
}

}  // namespace dyestead
