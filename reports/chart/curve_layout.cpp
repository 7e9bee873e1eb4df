#include "reports/chart/curve_layout.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace dyestead::reports {

namespace {

constexpr TextStyle kSmall{.size = 11};
constexpr double kGap = 6;

struct Reach {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();

    void take(double value) {
        if (!std::isfinite(value)) return;
        low = std::min(low, value);
        high = std::max(high, value);
    }
    bool empty() const { return low > high; }
};

bool drawn(const CurvePoint& point) {
    return std::isfinite(point.x) && std::isfinite(point.y);
}

bool drawn(const CurveBand& band) {
    return std::isfinite(band.from) && std::isfinite(band.to);
}

// All equal still wants an axis that the one value is on.
AxisTicks axis_over(Reach reach, int wanted) {
    if (reach.low == reach.high) {
        const double room = reach.low == 0 ? 1 : std::abs(reach.low) * 0.1;
        reach = {reach.low - room, reach.high + room};
    }
    return axis_ticks(reach.low, reach.high, wanted);
}

double place(double value, const AxisTicks& ticks, double from, double to) {
    return from + (to - from) * (value - ticks.low()) / (ticks.high() - ticks.low());
}

// Labels in rows above the plot: the lowest row where one does not stand upon another. Returns how many rows.
std::size_t lay_out_marks(CurveLayout& out, const Curve& data, double width) {
    std::vector<std::size_t> order;
    for (std::size_t m = 0; m < data.marks.size(); ++m)
        if (std::isfinite(data.marks[m].x)) order.push_back(m);
    std::ranges::stable_sort(order, {}, [&](std::size_t m) { return data.marks[m].x; });
    std::vector<double> row_ends;
    for (const std::size_t m : order) {
        const TextBox label = TextBox::cut(data.marks[m].label, kSmall, width);
        const double x = place(data.marks[m].x, out.x_axis, out.plot.x, out.plot.x + out.plot.width);
        const double left = std::max(0.0, std::min(x - label.width() / 2, width - label.width()));
        std::size_t row = 0;
        while (row < row_ends.size() && row_ends[row] > left) ++row;
        if (row == row_ends.size()) row_ends.push_back(0);
        row_ends[row] = left + label.width() + 2 * kGap;
        // The row for now; its height above the plot follows once the number of rows is known.
        out.marks.push_back({.x = x, .mark = m, .label = {label, left, static_cast<double>(row)}});
    }
    return row_ends.size();
}

void lay_out_legend_of(CurveLayout& out, const Curve& data, double width, double& height) {
    std::vector<std::string> names;
    for (std::size_t l = 0; l < data.lines.size(); ++l) {
        if (data.lines[l].name.empty()) continue;
        names.push_back(data.lines[l].name);
        out.legend_lines.push_back(l);
    }
    if (data.band && drawn(*data.band)) names.push_back(data.band->name);
    Legend legend = lay_out_legend(names, width);
    out.legend = std::move(legend.swatches);
    height = legend.height > 0 ? legend.height + kGap : 0;
}

void lay_out_ticks(CurveLayout& out, double text_height) {
    const double bottom = out.plot.y + out.plot.height;
    for (const double at : out.x_axis.at) {
        const TextBox label{axis_tick_label(out.x_axis, at), kSmall};
        const double x = place(at, out.x_axis, out.plot.x, out.plot.x + out.plot.width);
        out.x_ticks.push_back({x, {label, x - label.width() / 2, bottom + kGap / 2}});
    }
    for (const double at : out.y_axis.at) {
        const TextBox label{axis_tick_label(out.y_axis, at), kSmall};
        const double y = place(at, out.y_axis, bottom, out.plot.y);
        out.y_ticks.push_back({y, {label, out.plot.x - kGap - label.width(), y - text_height / 2}});
    }
    if (out.y_axis.low() < 0 && out.y_axis.high() > 0) out.zero_y = place(0, out.y_axis, bottom, out.plot.y);
}

void lay_out_points(CurveLayout& out, const Curve& data) {
    for (std::size_t l = 0; l < data.lines.size(); ++l) {
        bool joined = false;
        for (std::size_t p = 0; p < data.lines[l].points.size(); ++p) {
            const CurvePoint& point = data.lines[l].points[p];
            if (!drawn(point)) {
                joined = false;
                continue;
            }
            out.points.push_back({place(point.x, out.x_axis, out.plot.x, out.plot.x + out.plot.width),
                                  place(point.y, out.y_axis, out.plot.y + out.plot.height, out.plot.y), l, p, joined});
            joined = true;
        }
    }
}

}  // namespace

CurveLayout lay_out_curve(double width, double height, const Curve& data) {
    CurveLayout out;
    Reach across;
    Reach up;
    for (const CurveLine& line : data.lines) {
        for (const CurvePoint& point : line.points) {
            if (!drawn(point)) continue;
            across.take(point.x);
            up.take(point.y);
        }
    }
    if (across.empty()) return out;
    for (const CurveMark& mark : data.marks) across.take(mark.x);
    if (data.band && drawn(*data.band)) {
        across.take(data.band->from);
        across.take(data.band->to);
    }

    // A line of its own does not lie upon the lower edge, unless that is zero.
    constexpr double kAir = 0.03;
    if (up.low > 0) up.low = std::max(0.0, up.low - kAir * (up.high - up.low));

    double legend_height = 0;
    lay_out_legend_of(out, data, width, legend_height);
    const double text_height = TextBox{"0", kSmall}.height();
    constexpr int kUpSteps = 5;
    out.y_axis = axis_over(up, kUpSteps);
    double tick_width = 0;
    for (const double at : out.y_axis.at)
        tick_width = std::max(tick_width, TextBox{axis_tick_label(out.y_axis, at), kSmall}.width());
    out.plot.x = tick_width + kGap;
    // Half of the last tick's label stands beyond the plot.
    constexpr double kRoomForLabel = 18;
    out.plot.width = std::max(width - out.plot.x - kRoomForLabel, 20.0);
    constexpr double kStepWidth = 60;
    out.x_axis = axis_over(across, std::clamp(static_cast<int>(out.plot.width / kStepWidth), 2, 10));

    double top = legend_height;
    if (!data.y_label.empty()) {
        out.y_label = PlacedText{TextBox::cut(data.y_label, kSmall, width), 0, top};
        top += text_height + kGap / 2;
    }
    const auto mark_rows = static_cast<double>(lay_out_marks(out, data, width));
    for (PlacedCurveMark& mark : out.marks) mark.label.y = top + (mark_rows - 1 - mark.label.y) * text_height;
    out.plot.y = top + mark_rows * text_height + kGap;

    const double axis_height = kGap / 2 + text_height * (data.x_label.empty() ? 1 : 2) + 2;
    const double natural_plot = std::clamp(width * 0.35, 120.0, 240.0);
    out.natural_height = out.plot.y + natural_plot + axis_height;
    out.plot.height = height > 0 ? std::max(height - out.plot.y - axis_height, 10.0) : natural_plot;

    lay_out_ticks(out, text_height);
    lay_out_points(out, data);
    if (data.band && drawn(*data.band)) {
        const auto [from, to] = std::minmax(data.band->from, data.band->to);
        const double left = place(from, out.x_axis, out.plot.x, out.plot.x + out.plot.width);
        const double right = place(to, out.x_axis, out.plot.x, out.plot.x + out.plot.width);
        out.band = Box{left, out.plot.y, std::max(right - left, 2.0), out.plot.height};
    }
    if (!data.x_label.empty()) {
        const TextBox label = TextBox::cut(data.x_label, kSmall, width);
        const double x = std::max(0.0, out.plot.x + out.plot.width - label.width());
        out.x_label = PlacedText{label, x, out.plot.y + out.plot.height + kGap / 2 + text_height};
    }
    return out;
}

}  // namespace dyestead::reports
