#include "reports/chart/curve.h"

#include <doctest/doctest.h>

#include <limits>

#include "reports/chart/curve_layout.h"
#include "tests/reports/chart/painted.h"
#include "tests/reports/write/sample_drawings.h"

using namespace dyestead;
using namespace dyestead::reports;

namespace {

constexpr double kWidth = 700;
const double kNaN = std::numeric_limits<double>::quiet_NaN();

Curve one_line(std::vector<CurvePoint> points) {
    return {.x_label = "bars sold", .y_label = "GBP left", .lines = {{.points = std::move(points)}}};
}

}  // namespace

TEST_CASE("points, marks and band stand where their numbers are on the axes") {
    const Curve fair = sample_fair();
    const CurveLayout layout = lay_out_curve(kWidth, 0, fair);
    CHECK(layout.x_axis.low() == 0);
    CHECK(layout.x_axis.high() == 60);
    REQUIRE(layout.points.size() == 61);
    const double bar = layout.plot.width / 60;
    CHECK(layout.points[17].x == doctest::Approx(layout.plot.x + 17 * bar));
    REQUIRE(layout.marks.size() == 2);
    CHECK(layout.marks[0].x == doctest::Approx(layout.points[17].x));
    CHECK(layout.marks[1].x == doctest::Approx(layout.points[47].x));
    REQUIRE(layout.band);
    CHECK(layout.band->x == doctest::Approx(layout.plot.x + 22 * bar));
    CHECK(layout.band->width == doctest::Approx(19 * bar));
    CHECK(layout.band->height == doctest::Approx(layout.plot.height));
    // 17 bars bring 52.70: the line crosses zero where the mark stands.
    REQUIRE(layout.zero_y);
    CHECK(layout.points[17].y == doctest::Approx(*layout.zero_y));
    const double unit = layout.plot.height / (layout.y_axis.high() - layout.y_axis.low());
    CHECK(layout.points[18].y == doctest::Approx(*layout.zero_y - 3.1 * unit));
}

TEST_CASE("every point lies within the plot, and marks and band are on the axis even beyond the lines") {
    for (Curve data : {sample_fair(), sample_cure()}) {
        data.marks.push_back({95, "far out"});
        data.band = CurveBand{80, 70, "the other way round"};
        for (const double width : {200.0, 700.0}) {
            const CurveLayout layout = lay_out_curve(width, 0, data);
            const Box& plot = layout.plot;
            for (const PlacedPoint& point : layout.points) {
                CHECK(point.x >= plot.x - 0.01);
                CHECK(point.x <= plot.x + plot.width + 0.01);
                CHECK(point.y >= plot.y - 0.01);
                CHECK(point.y <= plot.y + plot.height + 0.01);
            }
            CHECK(layout.marks.back().x <= plot.x + plot.width + 0.01);
            REQUIRE(layout.band);
            CHECK(layout.band->width > 0);
        }
    }
}

TEST_CASE("labels of marks never stand upon one another, however near the marks are") {
    Curve data = sample_fair();
    data.marks = {{47, "47 pays you too"},
                  {17, "17 pays the stall"},
                  {19, "19 pays the petrol"},
                  {20, "20 a pie"},
                  {60, "60 is all you can carry in two crates"}};
    for (double width = 150; width < 900; width += 50) {
        const CurveLayout layout = lay_out_curve(width, 0, data);
        REQUIRE(layout.marks.size() == 5);
        for (std::size_t a = 0; a < layout.marks.size(); ++a) {
            const PlacedText& one = layout.marks[a].label;
            CHECK(one.x >= 0);
            CHECK(one.right() <= width + 0.01);
            CHECK(one.bottom() <= layout.plot.y + 0.01);
            CHECK(one.y >= layout.y_label->y + layout.y_label->text.height() - 0.01);
            for (std::size_t b = a + 1; b < layout.marks.size(); ++b) {
                const PlacedText& other = layout.marks[b].label;
                const bool beside = one.right() <= other.x || other.right() <= one.x;
                const bool above = one.bottom() <= other.y + 0.01 || other.bottom() <= one.y + 0.01;
                CHECK((beside || above));
            }
        }
    }
}

TEST_CASE("a point that is no number breaks the line") {
    const CurveLayout layout = lay_out_curve(kWidth, 0, one_line({{0, 1}, {1, 2}, {2, kNaN}, {3, 4}, {4, 5}}));
    REQUIRE(layout.points.size() == 4);
    CHECK_FALSE(layout.points[0].joined);
    CHECK(layout.points[1].joined);
    CHECK_FALSE(layout.points[2].joined);
    CHECK(layout.points[3].joined);
}

TEST_CASE("weights that are all alike, or one alone, still stand on an axis") {
    for (const Curve& data : {one_line({{0, 100}, {10, 100}}), one_line({{5, 100}}), one_line({{0, 0}})}) {
        const CurveLayout layout = lay_out_curve(kWidth, 0, data);
        CHECK(layout.y_axis.high() > layout.y_axis.low());
        CHECK(layout.x_axis.high() > layout.x_axis.low());
        CHECK(layout.points[0].y > layout.plot.y);
        CHECK(layout.points[0].y < layout.plot.y + layout.plot.height);
        CHECK(painted(data, 400, 200) > 500);
    }
}

TEST_CASE("a line does not lie upon the lower edge unless that is zero, and zero is not made up") {
    const CurveLayout cure = lay_out_curve(kWidth, 0, sample_cure());
    CHECK(cure.y_axis.low() < 100);
    CHECK(cure.y_axis.low() > 50);
    CHECK_FALSE(cure.zero_y);
    CHECK(lay_out_curve(kWidth, 0, one_line({{0, 0}, {10, 90}})).y_axis.low() == 0);
}

TEST_CASE("lines with names and the band are in the legend; a line without a name is not") {
    const Curve cure = sample_cure();
    CHECK(lay_out_curve(kWidth, 0, cure).legend.size() == 3);
    const CurveLayout fair = lay_out_curve(kWidth, 0, sample_fair());
    CHECK(fair.legend.size() == 1);
    CHECK(fair.legend_lines.empty());
}

TEST_CASE("a curve keeps within its bounds, wide or narrow, high or low") {
    for (const Curve& data : {sample_fair(), sample_cure()}) {
        for (const double width : {260.0, 500.0, 1000.0}) {
            for (const double height : {curve_height(width, data), 200.0, 500.0}) {
                CAPTURE(width);
                CAPTURE(height);
                const Ink ink = ink_of(data, width, height);
                CHECK(ink.left >= -1);
                CHECK(ink.top >= -1);
                CHECK(ink.right <= width + 1);
                CHECK(ink.bottom <= height + 1);
                CHECK(ink.bottom - ink.top > height * 0.85);
            }
        }
    }
}

TEST_CASE("the tip says the point that is near, else the mark, else the band") {
    Curve data = sample_fair();
    data.lines[0].points[30].shown = "30 bars: 40.30 left";
    const double height = curve_height(kWidth, data);
    const CurveLayout layout = lay_out_curve(kWidth, height, data);
    const auto tip = [&](double x, double y) { return curve_tip(x, y, kWidth, height, data); };
    CHECK(tip(layout.points[30].x + 1, layout.points[30].y - 2) == "30 bars: 40.30 left");
    CHECK(tip(layout.points[5].x, layout.points[5].y) == "5, -37.2");
    CHECK(tip(layout.marks[1].x, layout.plot.y + layout.plot.height - 5) == "47 pays you too");
    CHECK(tip(layout.band->x + 20, layout.plot.y + 3) == "your last fairs");
    CHECK(tip(layout.plot.x + 3, layout.plot.y + 3).empty());
    const Curve cure = sample_cure();
    const double cure_height = curve_height(kWidth, cure);
    const PlacedPoint second = lay_out_curve(kWidth, cure_height, cure).points[1];
    CHECK(curve_tip(second.x, second.y, kWidth, cure_height, cure) == "44 Blue: 7, 113.5");
}

TEST_CASE("without a finite point nothing is drawn") {
    CHECK(painted(Curve{}, 300, 200) == 0);
    CHECK(curve_height(kWidth, Curve{}) == 0);
    Curve nothing = one_line({{kNaN, 1}, {1, std::numeric_limits<double>::infinity()}});
    nothing.marks = {{17, "17 pays the stall"}};
    nothing.band = CurveBand{1, 2, "your last fairs"};
    CHECK(painted(nothing, 300, 200) == 0);
    Curve odd = one_line({{0, 1}, {1, 2}});
    odd.marks = {{kNaN, "no"}};
    odd.band = CurveBand{kNaN, 2, "no"};
    const CurveLayout layout = lay_out_curve(kWidth, 0, odd);
    CHECK(layout.marks.empty());
    CHECK_FALSE(layout.band);
    CHECK(layout.legend.empty());
    CHECK(painted(odd, 300, 200) > 500);
    CHECK(painted(sample_fair(), 1, 1) <= 4);
}

TEST_CASE("each line stands out from the paper, light or dark") {
    for (const ChartColours* colours : {&light_chart_colours(), &dark_chart_colours()})
        for (const std::size_t line : {0U, 2U, 4U}) CHECK(contrast(colours->goods[line], colours->paper) >= 3);
}
