// curve_layout.h - where does everything in a curve stand? Worked out once from measured text; the drawing, the tips
// and the natural height all read it.
#pragma once

#include <optional>
#include <vector>

#include "reports/chart/axis_ticks.h"
#include "reports/chart/curve.h"
#include "reports/chart/legend.h"

namespace dyestead::reports {

struct PlacedPoint {
    double x = 0;
    double y = 0;
    std::size_t line = 0;
    std::size_t point = 0;
    bool joined = false;  // to the one before it
};

// The sample of a line in the legend, or of the band.
struct CurveTick {
    double at = 0;  // on its own axis
    PlacedText label;
};

struct PlacedCurveMark {
    double x = 0;
    std::size_t mark = 0;
    PlacedText label;
};

struct CurveLayout {
    std::vector<PlacedSwatch> legend{};  // the lines that have a name, then the band
    std::vector<std::size_t> legend_lines{};
    std::vector<CurveTick> x_ticks{};
    std::vector<CurveTick> y_ticks{};
    std::vector<PlacedPoint> points{};
    std::vector<PlacedCurveMark> marks{};
    std::optional<Box> band{};
    std::optional<PlacedText> x_label{};
    std::optional<PlacedText> y_label{};
    std::optional<double> zero_y{};  // where the upright axis runs through zero
    Box plot{};
    AxisTicks x_axis;
    AxisTicks y_axis;
    double natural_height = 0;
};

// A height of 0 means the natural one. Without a finite point: an empty layout.
CurveLayout lay_out_curve(double width, double height, const Curve& data);

}  // namespace dyestead::reports
