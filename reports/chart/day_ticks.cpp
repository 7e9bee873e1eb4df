#include "reports/chart/day_ticks.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {

namespace {

struct Step {
    int days = 0;
    int months = 0;  // with `days` 0
};

constexpr int kMonthsInYear = 12;
constexpr std::array<Step, 11> kSteps{{{1, 0},
                                       {2, 0},
                                       {7, 0},
                                       {14, 0},
                                       {0, 1},
                                       {0, 3},
                                       {0, 6},
                                       {0, kMonthsInYear},
                                       {0, 2 * kMonthsInYear},
                                       {0, 5 * kMonthsInYear},
                                       {0, 10 * kMonthsInYear}}};

double least_days(Step step) {
    constexpr double kDaysInMonth = 30.44;
    return step.days > 0 ? step.days : step.months * kDaysInMonth;
}

std::string label_of(Day day, Step step) {
    const std::chrono::year_month_day date{day};
    const std::string month = short_month(static_cast<unsigned>(date.month()));
    if (step.days > 0) return say("{day} {month}", arg("day", static_cast<unsigned>(date.day())), arg("month", month));
    return step.months < kMonthsInYear ? month : fmt::format("{}", year_of(day));
}

// The first day at or after `first` that has a tick. Weeks begin on Mondays: ISO 8601.
Day begin_at(Day first, Step step) {
    if (step.days > 0) {
        constexpr unsigned kDaysInWeek = 7;
        if (static_cast<unsigned>(step.days) < kDaysInWeek) return first;
        const unsigned weekday = std::chrono::weekday{first}.iso_encoding() - 1;
        return first + Days{(kDaysInWeek - weekday) % kDaysInWeek};
    }
    const std::chrono::year_month_day date{first};
    const int months =
        static_cast<int>(date.year()) * kMonthsInYear + static_cast<int>(static_cast<unsigned>(date.month())) - 1;
    int at = (months + step.months - 1) / step.months * step.months;
    const bool part_of_month = date.day() != std::chrono::day{1};
    if (at == months && part_of_month) at += step.months;
    return day_of(at / kMonthsInYear, static_cast<unsigned>(at % kMonthsInYear) + 1, 1);
}

Day after(Day day, Step step) {
    return step.days > 0 ? day + Days{step.days} : months_before(day, -step.months);
}

}  // namespace

std::vector<DayTick> day_ticks(Day first, Day last, double width, double label_width) {
    std::vector<DayTick> ticks;
    if (last < first || !(width >= 1)) return ticks;
    const double day_width = width / static_cast<double>((last - first).count() + 1);
    const auto fits = [&](Step step) { return least_days(step) * day_width >= label_width; };
    const auto* const closest = std::ranges::find_if(kSteps, fits);
    Step step = closest == kSteps.end() ? kSteps.back() : *closest;
    // A year typed wrong makes an axis of centuries.
    constexpr int kMostMonths = 10'000 * kMonthsInYear;
    for (; !fits(step); step.months *= 10)
        if (step.months > kMostMonths) return ticks;
    int year = 0;
    for (Day day = begin_at(first, step); day <= last; day = after(day, step)) {
        DayTick tick{.on = day, .label = label_of(day, step)};
        if (step.months < kMonthsInYear && year_of(day) != year) tick.year = fmt::format("{}", year_of(day));
        year = year_of(day);
        ticks.push_back(std::move(tick));
    }
    return ticks;
}

}  // namespace dyestead::reports
