// day_ticks.h - at which days does an axis over days carry its ticks, and what stands beside them?
#pragma once

#include <string>
#include <vector>

#include "domain/values/date.h"

namespace dyestead::reports {

struct DayTick {
    Day on;
    std::string label;   // "3 Jul", "Jul" or "2026"
    std::string year{};  // below it where the year begins or is first told; blank elsewhere
};

// From `first` to `last`, both counted, on an axis `width` wide: a tick for every day, week, month, quarter, half year,
// year or number of years, whichever is the closest that leaves `label_width` for each. Ticks stand where a day begins.
std::vector<DayTick> day_ticks(Day first, Day last, double width, double label_width);

}  // namespace dyestead::reports
