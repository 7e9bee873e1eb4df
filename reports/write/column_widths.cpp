#include "reports/write/column_widths.h"

#include <algorithm>
#include <cstdint>

namespace dyestead::reports {
namespace {

struct Bounds {
    int low = 0;
    int high = 0;
};

std::int64_t sum_at(const std::vector<Bounds>& bounds, int level) {
    std::int64_t sum = 0;
    for (const Bounds& bound : bounds) sum += std::clamp(level, bound.low, bound.high);
    return sum;
}

// All columns rise to the same level, each within its bounds, until `available` is used up: the
// short ones come to all they want, the long ones share the rest.
std::vector<int> level_out(const std::vector<Bounds>& bounds, int available) {
    int level = 0;
    for (int step = 1 << 30; step > 0; step /= 2) {
        if (step <= available - level && sum_at(bounds, level + step) <= available) level += step;
    }
    std::vector<int> widths;
    for (const Bounds& bound : bounds) widths.push_back(std::clamp(level, bound.low, bound.high));
    std::int64_t spare = available - sum_at(bounds, level);
    for (std::size_t i = 0; i < widths.size() && spare > 0; ++i) {
        if (widths[i] != level || widths[i] >= bounds[i].high) continue;
        ++widths[i];
        --spare;
    }
    return widths;
}

}  // namespace

std::vector<int> fit_columns(std::vector<ColumnNeed> needs, int available) {
    for (ColumnNeed& need : needs) {
        need.least = std::max(need.least, 1);
        need.natural = std::max(need.natural, need.least);
    }
    std::vector<Bounds> bounds;
    const bool fits = columns_fit(needs, available);
    for (const ColumnNeed& need : needs) {
        bounds.push_back(fits ? Bounds{need.least, need.natural} : Bounds{1, need.least});
    }
    return level_out(bounds, available);
}

bool columns_fit(const std::vector<ColumnNeed>& needs, int available) {
    std::int64_t least = 0;
    for (const ColumnNeed& need : needs) least += need.least;
    return least <= available;
}

}  // namespace dyestead::reports
