// paint.h - boxes, hatching and words, drawn with cairo in the same way by every kind of picture.
#pragma once

#include <array>

#include "reports/chart/chart_colours.h"
#include "reports/chart/text_box.h"

namespace dyestead::reports {

inline constexpr double kOutline = 0.8;

enum class Hatch { none, rising, falling, both };

struct Paint {
    Colour fill;
    Hatch hatch = Hatch::none;
};

struct Box {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;

    bool holds(double at_x, double at_y) const {
        return at_x >= x && at_x < x + width && at_y >= y && at_y < y + height;
    }
};

void set_colour(cairo_t* cr, Colour colour);
// Adds it to the path; nothing is stroked yet.
void line(cairo_t* cr, double x1, double y1, double x2, double y2);
// Strokes the path in the current colour and width, with a rim of paper that parts it from what it crosses.
void stroke_with_rim(cairo_t* cr, const ChartColours& colours);
// Filled, hatched and outlined in the colour of words.
void paint_box(cairo_t* cr, Box box, const Paint& paint, const ChartColours& colours);
void put(cairo_t* cr, const PlacedText& placed);
// On a slip of paper of its own, so that neither hatching nor grid runs through the words.
void put_on_paper(cairo_t* cr, const PlacedText& placed, const ChartColours& colours, Colour ink);

}  // namespace dyestead::reports
