#include "reports/chart/legend.h"

#include <algorithm>

namespace dyestead::reports {

Legend lay_out_legend(const std::vector<std::string>& names, double width) {
    constexpr TextStyle kStyle{.size = 11};
    constexpr double kGap = 6;
    constexpr double kSwatch = 18;
    Legend legend;
    double x = 0;
    double y = 0;
    for (std::size_t i = 0; i < names.size(); ++i) {
        const TextBox name{names[i], kStyle, std::max(width - kSwatch - kGap, 1.0)};
        const double needed = kSwatch + kGap + name.width();
        if (x > 0 && x + needed > width) {
            x = 0;
            y = legend.height + kGap / 2;
        }
        legend.swatches.push_back(
            {.box = {x, y + 1, kSwatch, name.line_height(0) - 2}, .item = i, .name = {name, x + kSwatch + kGap, y}});
        legend.height = std::max(legend.height, y + name.height());
        x += needed + 2.5 * kGap;
    }
    return legend;
}

}  // namespace dyestead::reports
