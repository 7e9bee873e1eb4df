#include "reports/chart/stacked_bars.h"

#include <cairo.h>
#include <doctest/doctest.h>

#include <algorithm>
#include <limits>
#include <memory>

#include "reports/chart/stacked_bars_layout.h"
#include "tests/reports/chart/painted.h"
#include "tests/reports/write/sample_document.h"

using namespace dyestead::reports;

namespace {

constexpr int kWidth = 600;
constexpr int kHeight = 320;

std::size_t painted(const StackedBars& data) {
    return dyestead::reports::painted(data, kWidth, kHeight);
}

}  // namespace

TEST_CASE("segments stand one after the other, as long as their values are") {
    const StackedBars data = sample_bars();
    const StackedBarsLayout layout = lay_out_stacked_bars(kWidth, 0, data);
    REQUIRE(layout.segments.size() == 8 + 6 + 5);
    const double unit = layout.segments[0].width / 0.92;
    double x = layout.zero_x;
    for (std::size_t s = 0; s < 8; ++s) {
        const PlacedSegment& segment = layout.segments[s];
        CHECK(segment.x == doctest::Approx(x));
        CHECK(segment.width == doctest::Approx(data.bars[0].values[s] * unit));
        x += segment.width;
    }
    CHECK(layout.marks[0].x == doctest::Approx(layout.zero_x + 5.5 * unit));
}

TEST_CASE("a label stands inside its segment or not at all") {
    const StackedBarsLayout layout = lay_out_stacked_bars(kWidth, 0, sample_bars());
    std::size_t labelled = 0;
    for (const PlacedSegment& segment : layout.segments) {
        if (!segment.label) continue;
        ++labelled;
        CHECK(segment.label->x > segment.x);
        CHECK(segment.label->x + segment.label->text.width() < segment.x + segment.width);
    }
    CHECK(labelled > 5);
    CHECK(labelled < layout.segments.size());
}

TEST_CASE("nothing stands outside the drawing, wide or narrow") {
    for (const double width : {1000.0, 600.0, 320.0}) {
        CAPTURE(width);
        const StackedBars data = sample_bars();
        const StackedBarsLayout layout = lay_out_stacked_bars(width, 0, data);
        for (const PlacedText& total : layout.totals) CHECK(total.x + total.text.width() <= width);
        for (const PlacedSwatch& item : layout.legend) CHECK(item.name.x + item.name.text.width() <= width);
        for (const PlacedTick& tick : layout.ticks) CHECK(tick.label.x + tick.label.text.width() <= width);
        for (const PlacedMark& mark : layout.marks) CHECK(mark.label.x + mark.label.text.width() <= width);
        REQUIRE(layout.value_label);
        CHECK(layout.value_label->y + layout.value_label->text.height() <= stacked_bars_height(width, data));
    }
}

TEST_CASE("the time is hatched: its segments carry more ink than goods of the same size") {
    StackedBars goods{.value_label = "", .series = {{"a"}}, .bars = {{.label = "", .values = {1}, .shown = {}}}};
    StackedBars time = goods;
    time.series[0].kind = SeriesKind::time;
    const auto ink = [](const StackedBars& data) {
        const std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface{
            cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, nullptr), cairo_surface_destroy};
        const std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cr{cairo_create(surface.get()), cairo_destroy};
        // All fills the same white: what is left to see is lines.
        ChartColours colours = light_chart_colours();
        colours.goods.fill({1, 1, 1});
        colours.time.fill({1, 1, 1});
        draw_stacked_bars(cr.get(), kWidth, kHeight, data, colours);
        const std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> image{
            cairo_image_surface_create(CAIRO_FORMAT_RGB24, kWidth, kHeight), cairo_surface_destroy};
        const std::unique_ptr<cairo_t, decltype(&cairo_destroy)> paint{cairo_create(image.get()), cairo_destroy};
        cairo_set_source_rgb(paint.get(), 1, 1, 1);
        cairo_paint(paint.get());
        cairo_set_source_surface(paint.get(), surface.get(), 0, 0);
        cairo_paint(paint.get());
        cairo_surface_flush(image.get());
        const unsigned char* bytes = cairo_image_surface_get_data(image.get());
        const int stride = cairo_image_surface_get_stride(image.get());
        std::size_t dark = 0;
        for (int y = 0; y < kHeight; ++y) {
            for (int x = 0; x < kWidth; ++x) dark += bytes[y * stride + 4 * x] < 128 ? 1U : 0U;
        }
        return dark;
    };
    CHECK(ink(time) > ink(goods) * 2);
}

TEST_CASE("the tip names bar, series and value, and is empty beside the bars") {
    const StackedBars data = sample_bars();
    const StackedBarsLayout layout = lay_out_stacked_bars(kWidth, kHeight, data);
    const PlacedSegment& vat_time = layout.segments[6];
    const double x = vat_time.x + vat_time.width / 2;
    const double y = vat_time.y + vat_time.height / 2;
    CHECK(stacked_bars_tip(x, y, kWidth, kHeight, data) == "our own, vat time: 0.82");
    CHECK(stacked_bars_tip(x, vat_time.y - 1, kWidth, kHeight, data).empty());
    CHECK(stacked_bars_tip(0, 0, kWidth, kHeight, data).empty());
    CHECK(stacked_bars_tip(x, y, kWidth, kHeight, StackedBars{}).empty());
}

TEST_CASE("a tip without a shown text gives the number") {
    const StackedBars data{
        .value_label = "g", .series = {{"blue"}}, .bars = {{.label = "first", .values = {2.5}, .shown = {}}}};
    const PlacedSegment segment = lay_out_stacked_bars(kWidth, kHeight, data).segments.at(0);
    CHECK(stacked_bars_tip(segment.x + 1, segment.y + 1, kWidth, kHeight, data) == "first, blue: 2.5");
}

TEST_CASE("a credit goes to the left of zero, and what is no number has no segment") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const StackedBars data{
        .value_label = "GBP",
        .series = {{"a"}, {"b"}, {"c"}, {"d"}},
        .bars = {{.label = "x", .values = {2, -1, 0, nan}, .shown = {}, .mark = BarMark{nan, "no"}}}};
    const StackedBarsLayout layout = lay_out_stacked_bars(kWidth, 0, data);
    REQUIRE(layout.segments.size() == 2);
    CHECK(layout.segments[0].x == doctest::Approx(layout.zero_x));
    CHECK(layout.segments[1].x + layout.segments[1].width == doctest::Approx(layout.zero_x));
    CHECK(layout.segments[1].width == doctest::Approx(layout.segments[0].width / 2));
    CHECK(layout.marks.empty());
    CHECK(painted(data) > 1000);
}

TEST_CASE("without a bar nothing is drawn; without values there is an axis still") {
    CHECK(painted(StackedBars{}) == 0);
    CHECK(stacked_bars_height(kWidth, StackedBars{}) == 0);
    CHECK(painted({.value_label = "GBP", .series = {{"a"}}, .bars = {}}) == 0);
    CHECK(painted({.value_label = "GBP", .series = {}, .bars = {{.label = "x", .values = {}, .shown = {}}}}) > 100);
}

TEST_CASE("it can be drawn where there is hardly room") {
    CHECK(painted(sample_bars(), 40, 20) > 0);
    CHECK(painted(sample_bars(), 1, 1) <= 4);
}
