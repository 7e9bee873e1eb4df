// share.h - how is a whole number split or scaled without losing or inventing a unit?
// All products are taken in 128 bits, unless 64 hold them: machines divide those many times as fast. Not for floating
// point: see decisions/.
#pragma once

#include <cstdint>
#include <stdexcept>

namespace dyestead {

// The compiler's 128-bit integer; the only place in the program that names it.
__extension__ using Wide = __int128;

// Our own bug, never the maker's: facts are checked at the gate so that no sum can overflow.
struct Overflow : std::overflow_error {
    Overflow() : std::overflow_error("a total left the range that the books can hold") {}
};

constexpr std::int64_t narrow(Wide wide) {
    if (wide > INT64_MAX || wide < INT64_MIN) throw Overflow{};
    return static_cast<std::int64_t>(wide);
}

// The part of `rest` that goes with `taken` out of `left`, rounded towards zero. Taking shares one
// after another from a shrinking rest gives all of it to the last draw, so that parts always add up.
// Requires: 0 <= taken <= left, left > 0.
constexpr std::int64_t share_of(std::int64_t rest, std::int64_t taken, std::int64_t left) {
    std::int64_t product = 0;
    if (!__builtin_mul_overflow(rest, taken, &product)) return product == 0 ? 0 : product / left;
    return narrow(static_cast<Wide>(rest) * taken / left);
}

// a * b / c, rounded half away from zero. Requires: c != 0.
constexpr std::int64_t scaled(Wide a, std::int64_t b, Wide c) {
    Wide top = a * b;
    if (c < 0) {
        top = -top;
        c = -c;
    }
    const Wide half = c / 2;
    top += top >= 0 ? half : -half;
    const auto fits = [](Wide wide) { return -INT64_MAX <= wide && wide <= INT64_MAX; };
    if (fits(top) && fits(c)) return static_cast<std::int64_t>(top) / static_cast<std::int64_t>(c);
    return narrow(top / c);
}

constexpr std::int64_t checked_add(std::int64_t a, std::int64_t b) {
    std::int64_t sum = 0;
    if (__builtin_add_overflow(a, b, &sum)) throw Overflow{};
    return sum;
}

constexpr std::int64_t checked_subtract(std::int64_t a, std::int64_t b) {
    std::int64_t difference = 0;
    if (__builtin_sub_overflow(a, b, &difference)) throw Overflow{};
    return difference;
}

}  // namespace dyestead
