#include "reports/chart/timeline.h"

#include <doctest/doctest.h>

#include "reports/chart/timeline_layout.h"
#include "tests/reports/chart/painted.h"
#include "tests/reports/write/sample_drawings.h"

using namespace dyestead;
using namespace dyestead::reports;

namespace {

constexpr double kWidth = 700;

Timeline one_row(std::vector<TimelineSpan> spans) {
    return {.rows = {{.label = "vat", .spans = std::move(spans)}}};
}

}  // namespace

TEST_CASE("a bar runs from the morning of its first day to the evening of its last") {
    const Timeline data = one_row({{day_of(2026, 7, 1), day_of(2026, 7, 1), Shade::solid},
                                   {day_of(2026, 7, 2), day_of(2026, 7, 4), Shade::light},
                                   {day_of(2026, 7, 9), day_of(2026, 7, 10), Shade::hatched}});
    const TimelineLayout layout = lay_out_timeline(kWidth, 0, data);
    REQUIRE(layout.spans.size() == 3);
    const double day = (layout.plot_right - layout.plot_left) / 10;
    CHECK(layout.spans[0].box.x == doctest::Approx(layout.plot_left));
    CHECK(layout.spans[0].box.width == doctest::Approx(day));
    CHECK(layout.spans[1].box.x == doctest::Approx(layout.plot_left + day));
    CHECK(layout.spans[1].box.width == doctest::Approx(3 * day));
    CHECK(layout.spans[2].box.x + layout.spans[2].box.width == doctest::Approx(layout.plot_right));
}

TEST_CASE("a sign and today stand in the middle of their day, and today is on the axis even when nothing lies there") {
    Timeline data = one_row({{day_of(2026, 7, 1), day_of(2026, 7, 5), Shade::solid}});
    data.rows[0].signs = {{day_of(2026, 7, 3), Sign::dot, "60 degrees"}};
    data.today = day_of(2026, 7, 10);
    const TimelineLayout layout = lay_out_timeline(kWidth, 0, data);
    const double day = (layout.plot_right - layout.plot_left) / 10;
    REQUIRE(layout.signs.size() == 1);
    CHECK(layout.signs[0].x == doctest::Approx(layout.plot_left + 2.5 * day));
    CHECK(layout.signs[0].y == doctest::Approx(layout.spans[0].box.y + layout.spans[0].box.height / 2));
    REQUIRE(layout.today);
    CHECK(layout.today->x == doctest::Approx(layout.plot_left + 9.5 * day));
}

TEST_CASE("a day in years is still seen, and a bar that ends before it begins is its first day") {
    const TimelineLayout years = lay_out_timeline(
        kWidth, 0,
        one_row({{day_of(1990, 1, 1), day_of(2026, 1, 1), Shade::light}, {day_of(2000, 1, 1), day_of(2000, 1, 1)}}));
    CHECK(years.spans[1].box.width >= 2);
    const TimelineLayout backwards =
        lay_out_timeline(kWidth, 0, one_row({{day_of(2026, 7, 4), day_of(2026, 7, 1), Shade::solid}}));
    CHECK(backwards.spans[0].box.width == doctest::Approx(backwards.plot_right - backwards.plot_left));
}

TEST_CASE("a word stands inside its bar, clear of signs and of later bars, or not at all") {
    const TimelineLayout season = lay_out_timeline(800, 0, sample_season());
    // Under glass is too short a time for its word; two signs stand on the indigo in its bed.
    CHECK_FALSE(season.spans[0].word);
    CHECK_FALSE(season.spans[1].word);
    for (const std::size_t span : {2U, 3U}) {
        const PlacedSpan& placed = season.spans[span];
        REQUIRE(placed.word);
        CHECK(placed.word->x > placed.box.x);
        CHECK(placed.word->right() < placed.box.x + placed.box.width);
        CHECK(placed.word->y >= placed.box.y);
    }
    const Timeline crossed = one_row({{day_of(2026, 1, 1), day_of(2026, 12, 31), Shade::light, "waiting"},
                                      {day_of(2026, 6, 1), day_of(2026, 6, 9), Shade::solid}});
    CHECK_FALSE(lay_out_timeline(kWidth, 0, crossed).spans[0].word);
}

TEST_CASE("a label too long for one line goes on two where the row has room, and is cut where it has none") {
    Timeline data = sample_season();
    data.rows[0].label = "Indigo, the long bed by the hedge";
    const auto label = [&](double height) { return lay_out_timeline(300, height, data).labels[0].text; };
    CHECK(label(0).line_count() == 2);
    CHECK(label(0).height() <= lay_out_timeline(300, 0, data).row_height);
    CHECK(label(90).line_count() == 1);
}

TEST_CASE("long words at either side are cut and never reach the bars") {
    Timeline data = sample_shelf();
    data.rows[0].figure = "thirty-eight days to go, if the cellar stays as dry as it has been these weeks";
    for (const double width : {300.0, 700.0, 1100.0}) {
        CAPTURE(width);
        const TimelineLayout layout = lay_out_timeline(width, 0, data);
        for (const PlacedText& label : layout.labels) {
            CHECK(label.text.line_count() <= 2);
            CHECK(label.text.height() <= layout.row_height);
            CHECK(label.right() < layout.plot_left);
        }
        for (const PlacedText& figure : layout.figures) {
            CHECK(figure.text.line_count() == 1);
            CHECK(figure.x > layout.plot_right);
            CHECK(figure.right() <= width + 0.01);
        }
    }
}

TEST_CASE("the words along the axis do not overlap") {
    for (const Timeline& data : {sample_season(), sample_shelf(), sample_vat()}) {
        for (double width = 250; width < 1200; width += 37) {
            CAPTURE(width);
            const TimelineLayout layout = lay_out_timeline(width, 0, data);
            double end = 0;
            double year_end = 0;
            for (const PlacedDayTick& tick : layout.ticks) {
                CHECK(tick.label.x >= end);
                end = tick.label.right();
                if (!tick.year) continue;
                CHECK(tick.year->x >= year_end);
                year_end = tick.year->right();
            }
        }
    }
}

TEST_CASE("a timeline keeps within its bounds, wide or narrow, high or low") {
    for (const Timeline& data : {sample_season(), sample_shelf(), sample_vat()}) {
        for (const double width : {260.0, 500.0, 1000.0}) {
            for (const double height : {timeline_height(width, data), 200.0, 400.0}) {
                CAPTURE(width);
                CAPTURE(height);
                const Ink ink = ink_of(data, width, height);
                CHECK(ink.left >= -1);
                CHECK(ink.top >= -1);
                CHECK(ink.right <= width + 1);
                CHECK(ink.bottom <= height + 1);
                CHECK(ink.right - ink.left > width * 0.9);
            }
        }
    }
}

TEST_CASE("the tip names row, word and days, and the whole of a label that was cut") {
    const Timeline data = sample_season();
    const double height = timeline_height(kWidth, data);
    const TimelineLayout layout = lay_out_timeline(kWidth, height, data);
    const auto tip = [&](double x, double y) { return timeline_tip(x, y, kWidth, height, data); };
    CHECK(tip(layout.signs[0].x, layout.signs[0].y) == "Indigo, bed 1: first cut, 3 July 2026");
    const Box& bar = layout.spans[0].box;
    CHECK(tip(bar.x + 1, bar.y + 1) == "Indigo, bed 1: under glass, 2 April 2026 to 19 May 2026");
    CHECK(tip(1, layout.labels[1].y + 1) == "Weld, bed 2");
    CHECK(tip(layout.plot_right - 1, layout.plot_top + 1).empty());
    CHECK(tip(-5, -5).empty());
    Timeline plain = one_row({{day_of(2026, 7, 4), day_of(2026, 7, 4), Shade::solid}});
    const Box only = lay_out_timeline(kWidth, 0, plain).spans[0].box;
    CHECK(timeline_tip(only.x + 9, only.y + 9, kWidth, timeline_height(kWidth, plain), plain) == "vat: 4 July 2026");
}

TEST_CASE("of two bars and of two signs at one place the tip names the one on top") {
    Timeline data = one_row({{day_of(2026, 1, 1), day_of(2026, 1, 9), Shade::light, "waiting"},
                             {day_of(2026, 1, 4), day_of(2026, 1, 5), Shade::solid, "straining"}});
    const double height = timeline_height(kWidth, data);
    const Box top = lay_out_timeline(kWidth, height, data).spans[1].box;
    CHECK(timeline_tip(top.x + 3, top.y + 3, kWidth, height, data).find("straining") != std::string::npos);
    data.rows[0].signs = {{day_of(2026, 1, 2), Sign::dot, "pH 9"}, {day_of(2026, 1, 2), Sign::dot, "pH 8"}};
    const PlacedSign sign = lay_out_timeline(kWidth, height, data).signs[1];
    CHECK(timeline_tip(sign.x, sign.y, kWidth, height, data).find("pH 8") != std::string::npos);
}

TEST_CASE("without a row or a day nothing is drawn; a row without a day has its label") {
    CHECK(painted(Timeline{}, 300, 200) == 0);
    CHECK(timeline_height(kWidth, Timeline{}) == 0);
    const Timeline nothing{.rows = {{.label = "empty bed"}}, .today = day_of(2026, 7, 4), .legend = {}};
    CHECK(painted(nothing, 300, 200) == 0);
    Timeline some = one_row({{day_of(2026, 7, 4), day_of(2026, 7, 4), Shade::solid}});
    some.rows.push_back({.label = "empty bed"});
    CHECK(lay_out_timeline(kWidth, 0, some).labels.size() == 2);
    CHECK(painted(sample_season(), 1, 1) <= 4);
    CHECK(painted(sample_season(), 40, 20) > 0);
}

TEST_CASE("the three shades can be told apart in grey, in light and in dark colours") {
    for (const ChartColours* colours : {&light_chart_colours(), &dark_chart_colours()}) {
        // Solid against light; hatched is told by its lines, which stand out from their ground.
        CHECK(contrast(colours->goods[0], colours->goods[3]) > 3);
        CHECK(contrast(colours->time[0], colours->text) > 4.5);
    }
}
