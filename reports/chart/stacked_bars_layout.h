// stacked_bars_layout.h - where does everything in a chart of stacked bars stand?
//
// Worked out once from measured text; the drawing, the hit test and the natural height all
// read it, so they cannot disagree. No colours here, and nothing is drawn.
#pragma once

#include <optional>
#include <vector>

#include "reports/chart/legend.h"
#include "reports/chart/stacked_bars.h"
#include "reports/chart/text_box.h"

namespace dyestead::reports {

struct PlacedSegment {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;
    std::size_t bar = 0;
    std::size_t series = 0;
    std::optional<PlacedText> label{};  // only where it fits
};

struct PlacedMark {
    double x = 0;
    double top = 0;
    double bottom = 0;
    PlacedText label;
};

struct PlacedTick {
    double x = 0;
    PlacedText label;
};

struct StackedBarsLayout {
    std::vector<PlacedSwatch> legend;
    std::vector<PlacedTick> ticks;
    std::vector<PlacedText> bar_labels;
    std::vector<PlacedSegment> segments;
    std::vector<PlacedText> totals;
    std::vector<PlacedMark> marks;
    std::optional<PlacedText> value_label;
    double zero_x = 0;
    double plot_top = 0;
    double plot_bottom = 0;
    double natural_height = 0;
};

// A height of 0 means the natural one. Without a bar: an empty layout.
StackedBarsLayout lay_out_stacked_bars(double width, double height, const StackedBars& data);

}  // namespace dyestead::reports
