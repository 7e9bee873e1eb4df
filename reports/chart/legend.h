// legend.h - where do the samples of a picture's shades and their names stand, above it?
#pragma once

#include <string>
#include <vector>

#include "reports/chart/paint.h"
#include "reports/chart/text_box.h"

namespace dyestead::reports {

struct PlacedSwatch {
    Box box{};
    std::size_t item = 0;  // which of the names
    PlacedText name;
};

struct Legend {
    std::vector<PlacedSwatch> swatches{};
    double height = 0;  // 0 without a name
};

// Side by side from (0, 0), in as many lines as `width` asks for.
Legend lay_out_legend(const std::vector<std::string>& names, double width);

}  // namespace dyestead::reports
