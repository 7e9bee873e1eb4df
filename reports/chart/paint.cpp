#include "reports/chart/paint.h"

#include <cairo.h>

#include <algorithm>

namespace dyestead::reports {

namespace {

constexpr double kHatchSpacing = 6;

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

}  // namespace

void set_colour(cairo_t* cr, Colour colour) {
    cairo_set_source_rgb(cr, colour.red, colour.green, colour.blue);
}

void line(cairo_t* cr, double x1, double y1, double x2, double y2) {
    cairo_move_to(cr, x1, y1);
    cairo_line_to(cr, x2, y2);
}

void stroke_with_rim(cairo_t* cr, const ChartColours& colours) {
    constexpr double kRim = 1.3;
    cairo_pattern_t* const ink = cairo_pattern_reference(cairo_get_source(cr));
    const double width = cairo_get_line_width(cr);
    set_colour(cr, colours.paper);
    cairo_set_line_width(cr, width + 2 * kRim);
    cairo_stroke_preserve(cr);
    cairo_set_source(cr, ink);
    cairo_pattern_destroy(ink);
    cairo_set_line_width(cr, width);
    cairo_stroke(cr);
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

void put_on_paper(cairo_t* cr, const PlacedText& placed, const ChartColours& colours, Colour ink) {
    set_colour(cr, colours.paper);
    cairo_rectangle(cr, placed.x - 2, placed.y, placed.text.width() + 4, placed.text.height());
    cairo_fill(cr);
    set_colour(cr, ink);
    put(cr, placed);
}

}  // namespace dyestead::reports
