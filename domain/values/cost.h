// cost.h - what something cost, as the five parts that flow together through every lot.
// `hands_on` is somebody's minutes; the other four are money. Two readings: cash cost is what
// left the purse (all but labour), full cost adds the shop's own hours at their hourly target.
#pragma once

#include "domain/values/minutes.h"
#include "domain/values/money.h"

namespace dyestead {

struct Cost {
    Money materials{};
    Money labour{};
    Money energy{};
    Money overhead{};
    Minutes hands_on{};

    constexpr Money cash() const { return materials + energy + overhead; }
    constexpr Money full() const { return cash() + labour; }

    constexpr Cost& operator+=(const Cost& other) {
        materials += other.materials;
        labour += other.labour;
        energy += other.energy;
        overhead += other.overhead;
        hands_on += other.hands_on;
        return *this;
    }
    constexpr Cost operator-() const { return {-materials, -labour, -energy, -overhead, -hands_on}; }
    constexpr Cost& operator-=(const Cost& other) {
        materials -= other.materials;
        labour -= other.labour;
        energy -= other.energy;
        overhead -= other.overhead;
        hands_on -= other.hands_on;
        return *this;
    }
    friend constexpr Cost operator+(Cost a, const Cost& b) { return a += b; }
    friend constexpr Cost operator-(Cost a, const Cost& b) { return a -= b; }
    friend constexpr bool operator==(const Cost&, const Cost&) = default;
    constexpr bool is_zero() const { return *this == Cost{}; }
};

// The share of every part that goes with `taken` out of `left`. Requires: 0 <= taken <= left, left > 0.
constexpr Cost share_of(const Cost& rest, std::int64_t taken, std::int64_t left) {
    return {Money::millionths(share_of(rest.materials.in_millionths(), taken, left)),
            Money::millionths(share_of(rest.labour.in_millionths(), taken, left)),
            Money::millionths(share_of(rest.energy.in_millionths(), taken, left)),
            Money::millionths(share_of(rest.overhead.in_millionths(), taken, left)),
            Minutes::millionths(share_of(rest.hands_on.in_millionths(), taken, left))};
}

}  // namespace dyestead
