#include "reports/chart/chart_colours.h"

#include <doctest/doctest.h>

#include <array>

using namespace dyestead::reports;

TEST_CASE("contrast is what the guideline says of black on white and of a grey") {
    // Source: WCAG 2.1, definitions "contrast ratio" and "relative luminance".
    CHECK(contrast({0, 0, 0}, {1, 1, 1}) == doctest::Approx(21));
    CHECK(luminance({1, 1, 1}) == doctest::Approx(1));
    // From memory: #767676 is the lightest grey that still has 4.5 to 1 on white.
    const double grey = 0x76 / 255.0;
    CHECK(contrast({grey, grey, grey}, {1, 1, 1}) == doctest::Approx(4.54).epsilon(0.01));
}

TEST_CASE("words read on their paper, labels on their segments, and neighbours differ in grey") {
    for (const ChartColours* colours : {&light_chart_colours(), &dark_chart_colours()}) {
        // 4.5 to 1 for text. Source: WCAG 2.1, success criterion 1.4.3.
        CHECK(contrast(colours->text, colours->paper) >= 4.5);
        CHECK(contrast(colours->mark, colours->paper) >= 4.5);
        for (const Colour fill : colours->goods) CHECK(contrast(ink_on(fill), fill) >= 4.5);
        // Hatching is a line of the text colour on the fill: 3 to 1. Source: WCAG 2.1, 1.4.11.
        for (const Colour fill : colours->time) CHECK(contrast(colours->text, fill) >= 3);
        for (std::size_t i = 1; i < colours->goods.size(); ++i) {
            CAPTURE(i);
            CHECK(contrast(colours->goods[i - 1], colours->goods[i]) >= 2);
        }
    }
}
