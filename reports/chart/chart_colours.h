// chart_colours.h - the colours a picture is drawn in, on light and on dark paper.
//
// Neighbours in `goods` are far apart in lightness, not only in hue, so that a chart reads in
// grey and for eyes that do not part red from green. Time is told from goods by its hatching.
#pragma once

#include <array>

namespace dyestead::reports {

// Red, green and blue from 0 to 1 (sRGB).
struct Colour {
    double red = 0;
    double green = 0;
    double blue = 0;
};

struct ChartColours {
    Colour paper;  // what the chart is drawn on; it lies under labels, nothing else
    Colour text;   // words, outlines and hatching
    Colour quiet;  // grid lines
    Colour mark;   // the line across a bar
    std::array<Colour, 6> goods;
    std::array<Colour, 3> time;
};

const ChartColours& light_chart_colours();
const ChartColours& dark_chart_colours();

// Relative luminance, 0 black to 1 white. Source: WCAG 2.1, "relative luminance".
double luminance(Colour colour);

// Source: WCAG 2.1, "contrast ratio": 1 to 21.
double contrast(Colour one, Colour other);

// Black or white, whichever reads better on it.
Colour ink_on(Colour ground);

}  // namespace dyestead::reports
