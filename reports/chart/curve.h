// curve.h - how does one figure follow from another: one or several lines over a numeric axis, with upright marks where
// something begins, and a band of what has been.
//
// The same drawing goes to the window, to SVG and to PDF (see stacked_bars.h). Lines differ in their dashes as well as
// their colours, and the band is hatched: it reads in grey.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reports/chart/chart_colours.h"

using cairo_t = struct _cairo;

namespace dyestead::reports {

struct CurvePoint {
    double x = 0;
    double y = 0;
    std::string shown{};  // for its tip: "23 bars: 12.40 left"; blank for the two numbers
};

// From point to point in their order; one that is not finite breaks the line.
struct CurveLine {
    std::string name{};  // blank where the only line says what it is by the labels of the axes
    std::vector<CurvePoint> points{};
    bool dots = false;  // where each point was measured
};

struct CurveMark {
    double x = 0;
    std::string label;
};

struct CurveBand {
    double from = 0;
    double to = 0;
    std::string name;
};

struct Curve {
    std::string x_label;  // with its unit: "bars sold"
    std::string y_label;  // "GBP left after the stall"
    std::vector<CurveLine> lines{};
    std::vector<CurveMark> marks{};
    std::optional<CurveBand> band{};
};

// Draws within (0, 0) to (width, height); paints no background. Without a finite point it draws nothing.
void draw_curve(cairo_t* cr, double width, double height, const Curve& data, const ChartColours& colours);
double curve_height(double width, const Curve& data);
// What is said of the point, the mark or the band there; empty where nothing is.
std::string curve_tip(double x, double y, double width, double height, const Curve& data);

}  // namespace dyestead::reports
