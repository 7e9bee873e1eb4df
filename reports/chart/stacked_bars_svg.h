// stacked_bars_svg.h - the chart as an <svg> element to stand inside an HTML page.
#pragma once

#include <string>
#include <string_view>

#include "reports/chart/stacked_bars.h"

namespace dyestead::reports {

// As wide as the page lets it be. `sentence` is what a screen reader says in place of the
// picture. `id_prefix` (a letter first, then letters, digits, hyphens) keeps two charts on one
// page apart: cairo numbers the glyphs of every drawing from the start. Empty without a bar.
std::string stacked_bars_svg(const StackedBars& data, std::string_view sentence, const ChartColours& colours,
                             std::string_view id_prefix);

}  // namespace dyestead::reports
