#include "reports/chart/stacked_bars_layout.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "reports/chart/axis_ticks.h"

namespace dyestead::reports {
namespace {

constexpr TextStyle kPlain{.size = 12};
constexpr TextStyle kBold{.size = 12, .bold = true};
constexpr TextStyle kSmall{.size = 11};
constexpr double kGap = 6;
constexpr double kBarHeight = 28;
constexpr double kBarGap = 12;

double value_of(const StackedBar& bar, std::size_t series) {
    if (series >= bar.values.size() || !std::isfinite(bar.values[series])) return 0;
    return bar.values[series];
}

const std::optional<BarMark> kNoMark;

const std::optional<BarMark>& mark_of(const StackedBar& bar) {
    return bar.mark && std::isfinite(bar.mark->value) ? bar.mark : kNoMark;
}

AxisTicks value_axis(const StackedBars& data, double plot_width) {
    double low = 0;
    double high = 0;
    for (const StackedBar& bar : data.bars) {
        double left = 0;
        double right = 0;
        for (std::size_t s = 0; s < data.series.size(); ++s) {
            const double value = value_of(bar, s);
            (value < 0 ? left : right) += value;
        }
        const double mark = mark_of(bar) ? mark_of(bar)->value : 0;
        low = std::min({low, left, mark});
        high = std::max({high, right, mark});
    }
    return axis_ticks(low, high, std::clamp(static_cast<int>(plot_width / 50), 3, 8));
}

// The value axis: which x a value has.
struct Scale {
    double left = 0;
    double width = 0;
    AxisTicks ticks;

    double operator()(double value) const {
        return left + width * (value - ticks.low()) / (ticks.high() - ticks.low());
    }
};

struct BarPlace {
    double top = 0;
    double height = 0;
};

void lay_out_segments(StackedBarsLayout& out, const StackedBars& data, std::size_t bar_index, const Scale& scale,
                      BarPlace place) {
    const StackedBar& bar = data.bars[bar_index];
    double left = 0;
    double right = 0;
    for (std::size_t s = 0; s < data.series.size(); ++s) {
        const double value = value_of(bar, s);
        if (value == 0) continue;
        double& end = value < 0 ? left : right;
        const auto [from, to] = std::minmax({scale(end), scale(end + value)});
        end += value;
        PlacedSegment segment{
            .x = from, .y = place.top, .width = to - from, .height = place.height, .bar = bar_index, .series = s};
        if (s < bar.shown.size() && !bar.shown[s].empty()) {
            const TextBox text{bar.shown[s], kSmall};
            if (text.width() + kGap <= segment.width && text.height() + 2 <= segment.height) {
                segment.label = PlacedText{
                    text, from + (segment.width - text.width()) / 2, place.top + (place.height - text.height()) / 2};
            }
        }
        out.segments.push_back(std::move(segment));
    }
    if (bar.total_shown.empty()) return;
    const TextBox text{bar.total_shown, kBold};
    double x = scale(right) + kGap;
    // Beside the mark's line, never under it.
    if (const auto& mark = mark_of(bar); mark) {
        const double line = scale(mark->value);
        if (line > x - kGap - 1 && line < x + text.width() + kGap) x = line + kGap;
    }
    out.totals.push_back({text, x, place.top + (place.height - text.height()) / 2});
}

void lay_out_mark(StackedBarsLayout& out, const StackedBar& bar, const Scale& scale, BarPlace place, double width) {
    const auto& mark = mark_of(bar);
    if (!mark) return;
    const TextBox text{mark->label, kSmall};
    const double x = scale(mark->value);
    const double text_x = std::max(0.0, std::min(x - text.width() / 2, width - text.width()));
    out.marks.push_back({.x = x,
                         .top = place.top - 3,
                         .bottom = place.top + place.height + 3,
                         .label = {text, text_x, place.top - 3 - text.height()}});
}

}  // namespace

StackedBarsLayout lay_out_stacked_bars(double width, double height, const StackedBars& data) {
    StackedBarsLayout out;
    if (data.bars.empty()) return out;

    double label_width = 0;
    double total_width = 0;
    double mark_height = 0;
    for (const StackedBar& bar : data.bars) {
        label_width = std::max(label_width, TextBox{bar.label, kPlain}.width());
        total_width = std::max(total_width, TextBox{bar.total_shown, kBold}.width());
        if (mark_of(bar)) {
            mark_height = std::max(mark_height, TextBox{bar.mark->label, kSmall}.height() + 3);
        }
    }
    label_width = std::min(label_width, width * 0.3);
    Scale scale{.left = label_width + 2 * kGap, .width = 0, .ticks = {}};
    scale.width = std::max(width - scale.left - total_width - 3 * kGap, 20.0);
    scale.ticks = value_axis(data, scale.width);

    std::vector<std::string> names;
    for (const Series& series : data.series) names.push_back(series.name);
    Legend legend = lay_out_legend(names, width);
    out.legend = std::move(legend.swatches);
    out.plot_top = legend.height + 2 * kGap;
    const double tick_height = TextBox{"0", kSmall}.height();
    std::optional<TextBox> value_label;
    if (!data.value_label.empty()) {
        value_label.emplace(data.value_label, kSmall, width - scale.left);
    }
    const double axis_height = kGap + tick_height + (value_label ? value_label->height() : 0.0) + 2;

    const auto bars = static_cast<double>(data.bars.size());
    const auto label_box = [&](const StackedBar& bar) { return TextBox{bar.label, kPlain, label_width + 1}; };
    double bar_height = kBarHeight;
    for (const StackedBar& bar : data.bars) {
        bar_height = std::max(bar_height, label_box(bar).height());
    }
    double pitch = mark_height + bar_height + kBarGap;
    out.natural_height = out.plot_top + bars * pitch + axis_height;
    if (height > 0) {
        // More room makes the bars thicker, up to a point; less makes them thinner.
        const double given = (height - out.plot_top - axis_height) / bars;
        const double stretched = std::clamp(given, 4.0, pitch * 1.5);
        bar_height = std::max(bar_height + stretched - pitch, 2.0);
        pitch = stretched;
    }
    out.plot_bottom = out.plot_top + bars * pitch;
    out.zero_x = scale(0);

    for (std::size_t b = 0; b < data.bars.size(); ++b) {
        const double row_top = out.plot_top + static_cast<double>(b) * pitch;
        const BarPlace place{row_top + kBarGap / 2 + mark_height, bar_height};
        const TextBox label = label_box(data.bars[b]);
        out.bar_labels.push_back({label, 0, place.top + (bar_height - label.height()) / 2});
        lay_out_segments(out, data, b, scale, place);
        lay_out_mark(out, data.bars[b], scale, place, width);
    }
    for (const double at : scale.ticks.at) {
        const TextBox label{axis_tick_label(scale.ticks, at), kSmall};
        out.ticks.push_back({.x = scale(at), .label = {label, scale(at) - label.width() / 2, out.plot_bottom + kGap}});
    }
    if (value_label) {
        out.value_label = PlacedText{*value_label, scale.left, out.plot_bottom + kGap + tick_height};
    }
    return out;
}

}  // namespace dyestead::reports
