#include "reports/chart/stacked_bars.h"

#include <cairo.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "reports/chart/paint.h"
#include "reports/chart/stacked_bars_layout.h"
#include "reports/words/language.h"

namespace dyestead::reports {
namespace {

// The first goods series has the first goods colour, the first time series the first hatching.
Paint paint_of(const StackedBars& data, std::size_t series, const ChartColours& colours) {
    const SeriesKind kind = data.series[series].kind;
    const auto before = static_cast<std::size_t>(
        std::count_if(data.series.begin(), data.series.begin() + static_cast<std::ptrdiff_t>(series),
                      [&](const Series& s) { return s.kind == kind; }));
    switch (kind) {
        case SeriesKind::goods: return {colours.goods[before % colours.goods.size()], Hatch::none};
        case SeriesKind::time: {
            constexpr std::array kHatches{Hatch::rising, Hatch::falling, Hatch::both};
            return {colours.time[before % colours.time.size()], kHatches[before % kHatches.size()]};
        }
    }
    return {};
}

void draw_axis(cairo_t* cr, const StackedBarsLayout& layout, const ChartColours& colours) {
    cairo_set_line_width(cr, kOutline);
    set_colour(cr, colours.quiet);
    for (const PlacedTick& tick : layout.ticks) {
        line(cr, tick.x, layout.plot_top, tick.x, layout.plot_bottom + 3);
    }
    cairo_stroke(cr);
    set_colour(cr, colours.text);
    for (const PlacedTick& tick : layout.ticks) put(cr, tick.label);
    if (layout.value_label) put(cr, *layout.value_label);
}

void draw_segments(cairo_t* cr, const StackedBarsLayout& layout, const StackedBars& data, const ChartColours& colours) {
    for (const PlacedSegment& segment : layout.segments) {
        const Paint paint = paint_of(data, segment.series, colours);
        paint_box(cr, {segment.x, segment.y, segment.width, segment.height}, paint, colours);
        if (!segment.label) continue;
        if (paint.hatch == Hatch::none) {
            set_colour(cr, ink_on(paint.fill));
            put(cr, *segment.label);
        } else {
            put_on_paper(cr, *segment.label, colours, colours.text);
        }
    }
}

void draw_marks(cairo_t* cr, const StackedBarsLayout& layout, const ChartColours& colours) {
    cairo_set_line_width(cr, 2);
    for (const PlacedMark& mark : layout.marks) {
        put_on_paper(cr, mark.label, colours, colours.mark);
        line(cr, mark.x, mark.top, mark.x, mark.bottom);
        cairo_stroke(cr);
    }
}

}  // namespace

void draw_stacked_bars(cairo_t* cr, double width, double height, const StackedBars& data, const ChartColours& colours) {
    const StackedBarsLayout layout = lay_out_stacked_bars(width, height, data);
    if (data.bars.empty()) return;
    cairo_save(cr);
    draw_axis(cr, layout, colours);
    draw_segments(cr, layout, data, colours);
    set_colour(cr, colours.text);
    cairo_set_line_width(cr, 1.2);
    line(cr, layout.zero_x, layout.plot_top, layout.zero_x, layout.plot_bottom);
    cairo_stroke(cr);
    for (const PlacedText& label : layout.bar_labels) put(cr, label);
    for (const PlacedText& total : layout.totals) put(cr, total);
    draw_marks(cr, layout, colours);
    for (const PlacedSwatch& item : layout.legend) {
        paint_box(cr, item.box, paint_of(data, item.item, colours), colours);
        set_colour(cr, colours.text);
        put(cr, item.name);
    }
    cairo_restore(cr);
}

double stacked_bars_height(double width, const StackedBars& data) {
    return std::ceil(lay_out_stacked_bars(width, 0, data).natural_height);
}

std::string stacked_bars_tip(double x, double y, double width, double height, const StackedBars& data) {
    for (const PlacedSegment& segment : lay_out_stacked_bars(width, height, data).segments) {
        if (x < segment.x || x >= segment.x + segment.width) continue;
        if (y < segment.y || y >= segment.y + segment.height) continue;
        const StackedBar& bar = data.bars[segment.bar];
        const std::string& series = data.series[segment.series].name;
        if (segment.series < bar.shown.size() && !bar.shown[segment.series].empty()) {
            return fmt::format("{}, {}: {}", bar.label, series, bar.shown[segment.series]);
        }
        return fmt::format("{}, {}: {}", bar.label, series, in_marks_here(fmt::to_string(bar.values[segment.series])));
    }
    return {};
}

}  // namespace dyestead::reports
