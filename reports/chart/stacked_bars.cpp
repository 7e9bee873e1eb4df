#include "reports/chart/stacked_bars.h"

#include <cairo.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "reports/chart/stacked_bars_layout.h"

namespace dyestead::reports {
namespace {

constexpr double kOutline = 0.8;
constexpr double kHatchSpacing = 6;

enum class Hatch { none, rising, falling, both };

struct Paint {
    Colour fill;
    Hatch hatch = Hatch::none;
};

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

void set_colour(cairo_t* cr, Colour colour) {
    cairo_set_source_rgb(cr, colour.red, colour.green, colour.blue);
}

void line(cairo_t* cr, double x1, double y1, double x2, double y2) {
    cairo_move_to(cr, x1, y1);
    cairo_line_to(cr, x2, y2);
}

struct Box {
    double x, y, width, height;
};

// Diagonals cut off at the box by arithmetic: a clip would bloat the SVG by a path a segment.
void hatch_lines(cairo_t* cr, Box box, bool rising) {
    const double span = box.width + box.height;
    for (double offset = kHatchSpacing / 2; offset < span; offset += kHatchSpacing) {
        // The diagonal enters at the top or left edge and leaves at the left or bottom one.
        const double x1 = std::min(offset, box.width);
        const double y1 = offset - x1;
        const double y2 = std::min(offset, box.height);
        const double x2 = offset - y2;
        if (rising) {
            line(cr, box.x + x1, box.y + y1, box.x + x2, box.y + y2);
        } else {
            line(cr, box.x + box.width - x1, box.y + y1, box.x + box.width - x2, box.y + y2);
        }
    }
}

void paint_box(cairo_t* cr, Box box, const Paint& paint, const ChartColours& colours) {
    cairo_rectangle(cr, box.x, box.y, box.width, box.height);
    set_colour(cr, paint.fill);
    cairo_fill(cr);
    set_colour(cr, colours.text);
    if (paint.hatch != Hatch::none) {
        if (paint.hatch != Hatch::falling) hatch_lines(cr, box, true);
        if (paint.hatch != Hatch::rising) hatch_lines(cr, box, false);
        cairo_set_line_width(cr, kOutline);
        cairo_stroke(cr);
    }
    cairo_rectangle(cr, box.x, box.y, box.width, box.height);
    cairo_set_line_width(cr, kOutline);
    cairo_stroke(cr);
}

void put(cairo_t* cr, const PlacedText& placed) {
    placed.text.draw(cr, placed.x, placed.y);
}

// On a slip of paper of its own, so that neither hatching nor grid runs through the words.
void put_on_paper(cairo_t* cr, const PlacedText& placed, const ChartColours& colours, Colour ink) {
    set_colour(cr, colours.paper);
    cairo_rectangle(cr, placed.x - 2, placed.y, placed.text.width() + 4, placed.text.height());
    cairo_fill(cr);
    set_colour(cr, ink);
    put(cr, placed);
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
        paint_box(cr, {item.x, item.y, item.width, item.height}, paint_of(data, item.series, colours), colours);
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
        return fmt::format("{}, {}: {}", bar.label, series, bar.values[segment.series]);
    }
    return {};
}

}  // namespace dyestead::reports
