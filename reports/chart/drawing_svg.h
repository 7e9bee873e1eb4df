// drawing_svg.h - a picture as an <svg> element to stand inside an HTML page.
#pragma once

#include <string>
#include <string_view>

#include "reports/chart/drawing.h"

namespace dyestead::reports {

// As wide as the page lets it be. `sentence` is what a screen reader says in place of the
// picture. `id_prefix` (a letter first, then letters, digits, hyphens) keeps two pictures on one
// page apart: cairo numbers the glyphs of every drawing from the start. Empty where there is
// nothing to draw.
std::string drawing_svg(const Drawing& drawing, std::string_view sentence, const ChartColours& colours,
                        std::string_view id_prefix);

}  // namespace dyestead::reports
