#include "reports/chart/axis_ticks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "reports/words/language.h"

namespace dyestead::reports {

AxisTicks axis_ticks(double low, double high, int wanted) {
    // Beyond this span a step can no longer be added to its neighbour.
    const bool usable = std::isfinite(low) && std::isfinite(high) && low < high && std::isfinite(high - low) &&
                        high - low > 1e-12 * std::max(std::abs(low), std::abs(high));
    if (!usable) {
        low = 0;
        high = 1;
    }
    const double rough = (high - low) / std::max(1, wanted);
    int power = static_cast<int>(std::floor(std::log10(rough)));
    const double lead = rough / std::pow(10.0, power);
    // A hair of slack, so that 0.1 wanted and 0.1 worked out are the same step.
    constexpr double kSlack = 1e-9;
    int unit = lead <= 1 + kSlack ? 1 : lead <= 2 + kSlack ? 2 : lead <= 5 + kSlack ? 5 : 10;
    if (unit == 10) {
        unit = 1;
        ++power;
    }
    const double scale = std::pow(10.0, std::abs(power));
    // Dividing by a whole power of ten keeps 3 steps of 0.1 at 0.3, not 0.30000000000000004.
    const auto tick = [&](double count) { return power < 0 ? count * unit / scale : count * unit * scale; };
    const double step = tick(1);
    const double first = std::floor(low / step + kSlack);
    const double last = std::ceil(high / step - kSlack);
    AxisTicks ticks;
    ticks.decimals = power < 0 ? -power : 0;
    for (double count = first; count <= last; count += 1) ticks.at.push_back(tick(count));
    return ticks;
}

std::string axis_tick_label(const AxisTicks& ticks, double value) {
    if (value == 0) value = 0;  // never "-0"
    return in_marks_here(fmt::format("{:.{}f}", value, ticks.decimals));
}

}  // namespace dyestead::reports
