// drawing.h - a picture of any kind: draw it, how high is it, what lies under a point of it?
#pragma once

#include <variant>

#include "reports/chart/curve.h"
#include "reports/chart/stacked_bars.h"
#include "reports/chart/timeline.h"

namespace dyestead::reports {

using Drawing = std::variant<StackedBars, Timeline, Curve>;

// Draws within (0, 0) to (width, height); paints no background. An empty one draws nothing.
void draw(cairo_t* cr, double width, double height, const Drawing& drawing, const ChartColours& colours);
// The height at which everything has room when the drawing is `width` wide; 0 where there is nothing to draw.
double drawing_height(double width, const Drawing& drawing);
// Empty where nothing is.
std::string drawing_tip(double x, double y, double width, double height, const Drawing& drawing);

}  // namespace dyestead::reports
