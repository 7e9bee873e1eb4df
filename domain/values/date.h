// date.h - a day in the shop's calendar. Days only; every Day is a real one (there is no 30 February
// to check for). Day minus day is a length in days; day plus day does not exist.
#pragma once

#include <chrono>

namespace dyestead {

using Day = std::chrono::sys_days;
using Days = std::chrono::days;

constexpr Day day_of(int year, unsigned month, unsigned day) {
    return std::chrono::year{year} / std::chrono::month{month} / std::chrono::day{day};
}

constexpr int year_of(Day day) {
    return static_cast<int>(std::chrono::year_month_day{day}.year());
}

// The same date so many months earlier; the 31st becomes the month's last day where it has none.
constexpr Day months_before(Day day, int months) {
    const std::chrono::year_month_day ymd{day};
    const auto month = ymd.year() / ymd.month() - std::chrono::months{months};
    const auto last = std::chrono::year_month_day{month / std::chrono::last};
    return month / (ymd.day() > last.day() ? last.day() : ymd.day());
}

constexpr int days_in_year(int year) {
    return std::chrono::year{year}.is_leap() ? 366 : 365;
}

// 0 on the first of January.
constexpr int day_in_year(Day day) {
    return static_cast<int>((day - Day{day_of(year_of(day), 1, 1)}).count());
}

}  // namespace dyestead
