// axis_ticks.h - at which round numbers does an axis carry its ticks?
#pragma once

#include <string>
#include <vector>

namespace dyestead::reports {

// Multiples of a step of 1, 2 or 5 times a power of ten; the first is at or below the lowest
// value and the last at or above the highest, so that the axis covers all of them.
struct AxisTicks {
    std::vector<double> at;
    int decimals = 0;  // as many as the step needs

    double low() const { return at.front(); }
    double high() const { return at.back(); }
};

// About `wanted` steps, never more than that plus two. Nothing between low and high, or one of
// them not finite: an axis from 0 to 1.
AxisTicks axis_ticks(double low, double high, int wanted);

// "0.50": a decimal point and no grouping, with the decimals of the step.
std::string axis_tick_label(const AxisTicks& ticks, double value);

}  // namespace dyestead::reports
