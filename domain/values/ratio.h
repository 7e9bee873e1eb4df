// ratio.h - a share, strength, density or tax rate as two whole numbers, as it was typed:
// 1/3, 5 % (5/100) or 0.918 (918/1000).
#pragma once

#include <cstdint>

#include "domain/values/share.h"

namespace dyestead {

struct Ratio {
    std::int64_t top = 0;
    std::int64_t bottom = 1;  // > 0

    constexpr bool is_zero() const { return top == 0; }
    // Equal as numbers: 1/2 and 50 % are the same share.
    friend constexpr bool operator==(Ratio a, Ratio b) {
        return static_cast<Wide>(a.top) * b.bottom == static_cast<Wide>(b.top) * a.bottom;
    }
    friend constexpr auto operator<=>(Ratio a, Ratio b) {
        return static_cast<Wide>(a.top) * b.bottom <=> static_cast<Wide>(b.top) * a.bottom;
    }
};

// number * ratio, rounded half away from zero.
constexpr std::int64_t times(std::int64_t number, Ratio ratio) {
    return scaled(number, ratio.top, ratio.bottom);
}

}  // namespace dyestead
