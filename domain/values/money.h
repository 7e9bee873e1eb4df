// money.h - an amount in whole millionths of the shop's one currency, of either sign.
// Not for prices per quantity: see Rate. Rounded only when it is shown (text/amounts.h).
#pragma once

#include <compare>
#include <cstdint>
#include <type_traits>

#include "domain/values/share.h"

namespace dyestead {

class Money {
public:
    constexpr Money() = default;
    static constexpr Money millionths(std::int64_t count) { return Money{count}; }
    static constexpr Money units(std::int64_t count) { return Money{narrow(static_cast<Wide>(count) * 1'000'000)}; }
    static constexpr Money hundredths(std::int64_t count) { return Money{narrow(static_cast<Wide>(count) * 10'000)}; }

    constexpr std::int64_t in_millionths() const { return count_; }
    constexpr bool is_zero() const { return count_ == 0; }

    // Throws: Overflow when the sum leaves 64 bits.
    constexpr Money& operator+=(Money other) {
        count_ = checked_add(count_, other.count_);
        return *this;
    }
    constexpr Money& operator-=(Money other) {
        count_ = checked_subtract(count_, other.count_);
        return *this;
    }
    constexpr Money operator-() const { return Money{checked_subtract(0, count_)}; }
    friend constexpr Money operator+(Money a, Money b) { return a += b; }
    friend constexpr Money operator-(Money a, Money b) { return a -= b; }
    friend constexpr auto operator<=>(Money, Money) = default;

private:
    constexpr explicit Money(std::int64_t count) : count_{count} {}
    std::int64_t count_{0};
};

// No single fact may state more than a million million units of currency: far above any workshop.
// Only nine of them add up inside 64 bits, so the replay watches the running total as well.
inline constexpr Money kLargestStatedMoney = Money::units(1'000'000'000'000);

static_assert(std::is_trivially_copyable_v<Money>);
static_assert(!std::is_convertible_v<int, Money>);
static_assert(!std::is_constructible_v<Money, double>);

}  // namespace dyestead
