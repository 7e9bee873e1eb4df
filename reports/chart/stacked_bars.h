// stacked_bars.h - what one thing costs, part by part, beside others: bars that lie on their
// side so that their names can be read, cut into segments.
//
// The same drawing goes to the window, to SVG and to PDF: it is laid out from measured text in
// whatever unit the cairo_t counts, never from the screen's. Segments of the maker's own time are
// hatched as well as coloured, and every segment has an outline, so that it reads in grey.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reports/chart/chart_colours.h"

using cairo_t = struct _cairo;

namespace dyestead::reports {

// Goods are bought; time is the maker's own hours, drawn hatched.
enum class SeriesKind { goods, time };

struct Series {
    std::string name;
    SeriesKind kind = SeriesKind::goods;
};

// A line across one bar, for instance the price it sells at.
struct BarMark {
    double value = 0;
    std::string label;
};

// `values` and `shown` have one entry for each series, in its order; missing ones count as 0.
// Negative values (a credit) go to the left of zero; zero and not finite ones have no segment.
struct StackedBar {
    std::string label;
    std::vector<double> values{};
    std::vector<std::string> shown{};
    std::string total_shown{};  // written after the bar's end, empty for none
    std::optional<BarMark> mark{};
};

struct StackedBars {
    std::string value_label;  // axis label with its unit: "GBP for one bar"
    std::vector<Series> series{};
    std::vector<StackedBar> bars{};
};

// Draws within (0, 0) to (width, height); paints no background. Without a bar it draws nothing.
void draw_stacked_bars(cairo_t* cr, double width, double height, const StackedBars& data, const ChartColours& colours);

// The height at which every bar has room when the drawing is `width` wide; 0 without a bar.
double stacked_bars_height(double width, const StackedBars& data);

// What lies under a point of the same drawing: "our own, vat time: 1.23"; empty where nothing is.
std::string stacked_bars_tip(double x, double y, double width, double height, const StackedBars& data);

}  // namespace dyestead::reports
