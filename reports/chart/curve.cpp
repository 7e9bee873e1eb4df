#include "reports/chart/curve.h"

#include <cairo.h>
#include <fmt/format.h>

#include <array>
#include <cmath>
#include <numbers>

#include "reports/chart/curve_layout.h"
#include "reports/words/language.h"
#include "reports/words/say.h"

namespace dyestead::reports {

namespace {

constexpr double kDot = 3.5;

struct Pen {
    Colour colour;
    std::array<double, 2> dashes{};  // both 0: none
};

Pen pen_of(std::size_t line, const ChartColours& colours) {
    // Those of the goods that stand out from the paper, light or dark.
    const std::array<Pen, 4> pens{
        {{colours.goods[0], {0, 0}}, {colours.goods[4], {9, 4}}, {colours.goods[2], {2, 3}}, {colours.text, {14, 5}}}};
    return pens[line % pens.size()];
}

void take_pen(cairo_t* cr, const Pen& pen) {
    set_colour(cr, pen.colour);
    cairo_set_line_width(cr, 2.2);
    cairo_set_dash(cr, pen.dashes.data(), pen.dashes[0] > 0 ? 2 : 0, 0);
}

Paint band_paint(const ChartColours& colours) {
    return {colours.time[1], Hatch::rising};
}

void draw_grid(cairo_t* cr, const CurveLayout& layout, const ChartColours& colours) {
    const Box& plot = layout.plot;
    const double bottom = plot.y + plot.height;
    const double right = plot.x + plot.width;
    cairo_set_line_width(cr, kOutline);
    set_colour(cr, colours.quiet);
    for (const CurveTick& tick : layout.x_ticks) line(cr, tick.at, plot.y, tick.at, bottom + 3);
    for (const CurveTick& tick : layout.y_ticks) line(cr, plot.x - 3, tick.at, right, tick.at);
    cairo_stroke(cr);
    set_colour(cr, colours.text);
    cairo_set_line_width(cr, 1.2);
    const double across = layout.zero_y.value_or(bottom);
    line(cr, plot.x, across, right, across);
    line(cr, plot.x, plot.y, plot.x, bottom);
    cairo_stroke(cr);
    for (const CurveTick& tick : layout.x_ticks) put(cr, tick.label);
    for (const CurveTick& tick : layout.y_ticks) put(cr, tick.label);
    if (layout.x_label) put(cr, *layout.x_label);
    if (layout.y_label) put(cr, *layout.y_label);
}

void draw_lines(cairo_t* cr, const CurveLayout& layout, const Curve& data, const ChartColours& colours) {
    cairo_save(cr);
    cairo_set_line_join(cr, CAIRO_LINE_JOIN_ROUND);
    for (std::size_t at = 0; at < layout.points.size();) {
        const std::size_t index = layout.points[at].line;
        take_pen(cr, pen_of(index, colours));
        const std::size_t first = at;
        for (; at < layout.points.size() && layout.points[at].line == index; ++at) {
            const PlacedPoint& point = layout.points[at];
            if (point.joined)
                cairo_line_to(cr, point.x, point.y);
            else
                cairo_move_to(cr, point.x, point.y);
        }
        stroke_with_rim(cr, colours);
        // A point between two breaks has no line that would show it.
        for (std::size_t p = first; p < at; ++p) {
            const bool alone = !layout.points[p].joined && (p + 1 == at || !layout.points[p + 1].joined);
            if (!data.lines[index].dots && !alone) continue;
            cairo_new_sub_path(cr);
            cairo_arc(cr, layout.points[p].x, layout.points[p].y, kDot, 0, 2 * std::numbers::pi);
        }
        cairo_fill(cr);
    }
    cairo_restore(cr);
}

void draw_marks(cairo_t* cr, const CurveLayout& layout, const ChartColours& colours) {
    set_colour(cr, colours.mark);
    cairo_set_line_width(cr, 2);
    for (const PlacedCurveMark& mark : layout.marks)
        line(cr, mark.x, mark.label.bottom(), mark.x, layout.plot.y + layout.plot.height);
    stroke_with_rim(cr, colours);
    for (const PlacedCurveMark& mark : layout.marks) put_on_paper(cr, mark.label, colours, colours.mark);
}

void draw_legend(cairo_t* cr, const CurveLayout& layout, const Curve& data, const ChartColours& colours) {
    for (const PlacedSwatch& swatch : layout.legend) {
        const Box& box = swatch.box;
        if (swatch.item < layout.legend_lines.size()) {
            const std::size_t index = layout.legend_lines[swatch.item];
            const double middle = box.y + box.height / 2;
            cairo_save(cr);
            take_pen(cr, pen_of(index, colours));
            line(cr, box.x, middle, box.x + box.width, middle);
            cairo_stroke(cr);
            if (data.lines[index].dots) {
                cairo_arc(cr, box.x + box.width / 2, middle, kDot, 0, 2 * std::numbers::pi);
                cairo_fill(cr);
            }
            cairo_restore(cr);
        } else {
            paint_box(cr, box, band_paint(colours), colours);
        }
        set_colour(cr, colours.text);
        put(cr, swatch.name);
    }
}

std::string point_tip(const CurveLine& line, const CurvePoint& point, const CurveLayout& layout) {
    std::string told = point.shown;
    if (told.empty()) {
        const auto mark = [](double value, int places) { return in_marks_here(fmt::format("{:.{}f}", value, places)); };
        // TRANSLATORS: a point of a curve; where the decimal mark is a comma, part the two by something else.
        told = say("{across}, {up}", arg("across", mark(point.x, layout.x_axis.decimals)),
                   arg("up", mark(point.y, layout.y_axis.decimals + 1)));
    }
    return line.name.empty() ? told : say("{name}: {what}", arg("name", line.name), arg("what", told));
}

}  // namespace

void draw_curve(cairo_t* cr, double width, double height, const Curve& data, const ChartColours& colours) {
    const CurveLayout layout = lay_out_curve(width, height, data);
    if (layout.natural_height == 0) return;
    cairo_save(cr);
    if (layout.band) paint_box(cr, *layout.band, band_paint(colours), colours);
    draw_grid(cr, layout, colours);
    draw_lines(cr, layout, data, colours);
    draw_marks(cr, layout, colours);
    draw_legend(cr, layout, data, colours);
    cairo_restore(cr);
}

double curve_height(double width, const Curve& data) {
    return std::ceil(lay_out_curve(width, 0, data).natural_height);
}

std::string curve_tip(double x, double y, double width, double height, const Curve& data) {
    constexpr double kNear = 8;
    const CurveLayout layout = lay_out_curve(width, height, data);
    const PlacedPoint* nearest = nullptr;
    double least = kNear;
    for (const PlacedPoint& point : layout.points) {
        const double away = std::hypot(point.x - x, point.y - y);
        if (away > least) continue;
        least = away;
        nearest = &point;
    }
    if (nearest != nullptr) {
        const CurveLine& line = data.lines[nearest->line];
        return point_tip(line, line.points[nearest->point], layout);
    }
    for (const PlacedCurveMark& mark : layout.marks)
        if (std::abs(mark.x - x) <= 3 && y >= mark.label.y && y <= layout.plot.y + layout.plot.height)
            return data.marks[mark.mark].label;
    if (layout.band && layout.band->holds(x, y)) return data.band->name;
    return {};
}

}  // namespace dyestead::reports
