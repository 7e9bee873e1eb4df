// minutes.h - a length of somebody's time, in whole millionths of a minute, so that it can be
// shared out over lots exactly as money is.
#pragma once

#include <compare>
#include <cstdint>
#include <type_traits>

#include "domain/values/money.h"

namespace dyestead {

class Minutes {
public:
    constexpr Minutes() = default;
    static constexpr Minutes millionths(std::int64_t count) { return Minutes{count}; }
    static constexpr Minutes whole(std::int64_t count) { return Minutes{narrow(static_cast<Wide>(count) * 1'000'000)}; }

    constexpr std::int64_t in_millionths() const { return count_; }
    constexpr bool is_zero() const { return count_ == 0; }

    constexpr Minutes& operator+=(Minutes other) {
        count_ = checked_add(count_, other.count_);
        return *this;
    }
    constexpr Minutes& operator-=(Minutes other) {
        count_ = checked_subtract(count_, other.count_);
        return *this;
    }
    constexpr Minutes operator-() const { return Minutes{checked_subtract(0, count_)}; }
    friend constexpr Minutes operator+(Minutes a, Minutes b) { return a += b; }
    friend constexpr Minutes operator-(Minutes a, Minutes b) { return a -= b; }
    friend constexpr auto operator<=>(Minutes, Minutes) = default;

private:
    constexpr explicit Minutes(std::int64_t count) : count_{count} {}
    std::int64_t count_{0};
};

// A century of minutes: no single entry says more.
inline constexpr Minutes kLongestStatedTime = Minutes::whole(100LL * 366 * 24 * 60);

// What an hour is to bring, or is paid. Time times pay is the only road from minutes to money;
// rounded half away from zero.
struct HourlyRate {
    Money per_hour;
    friend constexpr auto operator<=>(HourlyRate, HourlyRate) = default;
};

constexpr Money operator*(HourlyRate rate, Minutes time) {
    return Money::millionths(scaled(rate.per_hour.in_millionths(), time.in_millionths(), 60'000'000));
}

static_assert(std::is_trivially_copyable_v<Minutes>);
static_assert(!std::is_convertible_v<int, Minutes>);

}  // namespace dyestead
