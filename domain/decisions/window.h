// window.h - which stretch of days does a decision look back over?
#pragma once

#include "domain/values/date.h"

namespace dyestead {

// Both days belong to it.
struct Window {
    Day first{};
    Day last{};
    constexpr bool contains(Day day) const { return first <= day && day <= last; }
    friend constexpr bool operator==(Window, Window) = default;
};

// The months up to and with a day: 12 months to 2026-10-31 begin on 2025-11-01.
constexpr Window months_to(Day last, int months) {
    return {months_before(last, months) + Days{1}, last};
}

constexpr Window calendar_year(int year) {
    return {day_of(year, 1, 1), day_of(year, 12, 31)};
}

}  // namespace dyestead
