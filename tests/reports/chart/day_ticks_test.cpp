#include "reports/chart/day_ticks.h"

#include <doctest/doctest.h>

using namespace dyestead;
using namespace dyestead::reports;

namespace {

constexpr double kLabel = 40;

std::vector<std::string> labels(Day first, Day last, double width) {
    std::vector<std::string> all;
    for (const DayTick& tick : day_ticks(first, last, width, kLabel))
        all.push_back(tick.label + (tick.year.empty() ? "" : "/" + tick.year));
    return all;
}

using Labels = std::vector<std::string>;

}  // namespace

TEST_CASE("a few days have a tick each, weeks one on Mondays, seasons one for each month") {
    CHECK(labels(day_of(2026, 7, 3), day_of(2026, 7, 6), 400) == Labels{"3 Jul/2026", "4 Jul", "5 Jul", "6 Jul"});
    // 6 July 2026 is a Monday.
    CHECK(labels(day_of(2026, 7, 3), day_of(2026, 7, 24), 150) == Labels{"6 Jul/2026", "13 Jul", "20 Jul"});
    CHECK(labels(day_of(2026, 4, 2), day_of(2026, 9, 30), 400) == Labels{"May/2026", "Jun", "Jul", "Aug", "Sep"});
    CHECK(labels(day_of(2026, 4, 1), day_of(2026, 5, 30), 100) == Labels{"Apr/2026", "May"});
}

TEST_CASE("years are told once, and long times by the year or by ten of them") {
    CHECK(labels(day_of(2025, 9, 12), day_of(2026, 8, 20), 200) == Labels{"Oct/2025", "Jan/2026", "Apr", "Jul"});
    CHECK(labels(day_of(2024, 4, 20), day_of(2026, 10, 10), 120) == Labels{"2025", "2026"});
    CHECK(labels(day_of(1998, 4, 20), day_of(2026, 10, 10), 120) == Labels{"2000", "2010", "2020"});
    CHECK(labels(day_of(2025, 12, 30), day_of(2026, 1, 2), 400) ==
          Labels{"30 Dec/2025", "31 Dec", "1 Jan/2026", "2 Jan"});
}

TEST_CASE("whatever the days and the width, no two labels are nearer than a label is wide") {
    for (int days = 1; days < 40'000; days = days * 5 / 4 + 1) {
        for (const double width : {60.0, 200.0, 900.0}) {
            const Day first = day_of(1950, 1, 1) + Days{days * 7};
            const Day last = first + Days{days};
            const double day = width / (days + 1);
            const auto ticks = day_ticks(first, last, width, kLabel);
            for (std::size_t i = 1; i < ticks.size(); ++i) {
                const double apart = static_cast<double>((ticks[i].on - ticks[i - 1].on).count()) * day;
                // February is shorter than a month is on the average.
                CHECK(apart >= kLabel * 0.9);
            }
            for (const DayTick& tick : ticks) {
                CHECK(tick.on >= first);
                CHECK(tick.on <= last);
            }
        }
    }
}

TEST_CASE("without days or without room there are no ticks") {
    CHECK(day_ticks(day_of(2026, 7, 3), day_of(2026, 7, 2), 400, kLabel).empty());
    CHECK(day_ticks(day_of(2026, 7, 3), day_of(2026, 7, 5), 0, kLabel).empty());
    CHECK(day_ticks(day_of(2026, 7, 3), day_of(2026, 7, 3), 5, kLabel).empty());
}
