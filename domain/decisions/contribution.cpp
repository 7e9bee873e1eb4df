#include "domain/decisions/contribution.h"

#include <algorithm>
#include <numeric>

namespace dyestead {

std::optional<double> units_to_earn(double fixed, double contribution, double profit) {
    if (!(contribution > 0)) return std::nullopt;
    return std::max(0.0, (fixed + profit) / contribution);
}

std::optional<double> before_tax(double after_tax, double tax_rate) {
    if (!(tax_rate < 1)) return std::nullopt;
    return after_tax / (1 - tax_rate);
}

std::optional<double> margin_of_safety(double sold, double break_even) {
    if (!(sold > 0)) return std::nullopt;
    return (sold - break_even) / sold;
}

std::vector<double> best_use(const std::vector<ScarceUse>& uses, double available) {
    std::vector<std::size_t> order(uses.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    // a/b > c/d without dividing, so that what takes nothing comes first.
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return uses[a].contribution * uses[b].takes > uses[b].contribution * uses[a].takes;
    });
    std::vector<double> made(uses.size(), 0.0);
    for (const std::size_t at : order) {
        const ScarceUse& use = uses[at];
        if (!(use.contribution > 0)) continue;
        made[at] = use.takes > 0 ? std::clamp(available / use.takes, 0.0, use.at_most) : use.at_most;
        available -= made[at] * use.takes;
    }
    return made;
}

}  // namespace dyestead
