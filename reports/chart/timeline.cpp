#include "reports/chart/timeline.h"

#include <cairo.h>

#include <cmath>
#include <numbers>

#include "reports/chart/timeline_layout.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {

namespace {

Paint paint_of(Shade shade, const ChartColours& colours) {
    switch (shade) {
        case Shade::solid: return {colours.goods[0]};
        case Shade::light: return {colours.goods[3]};
        case Shade::hatched: return {colours.time[0], Hatch::rising};
    }
    return {};
}

// Paper within words' colour: seen on dark and on light bars and on the bare paper.
void draw_sign(cairo_t* cr, double x, double y, Sign sign, const ChartColours& colours) {
    switch (sign) {
        case Sign::notch:
            cairo_move_to(cr, x, y - kSignRadius - 1);
            cairo_line_to(cr, x + kSignRadius, y);
            cairo_line_to(cr, x, y + kSignRadius + 1);
            cairo_line_to(cr, x - kSignRadius, y);
            cairo_close_path(cr);
            break;
        case Sign::dot:
            cairo_new_sub_path(cr);
            cairo_arc(cr, x, y, kSignRadius - 1, 0, 2 * std::numbers::pi);
            break;
    }
    set_colour(cr, colours.paper);
    cairo_fill_preserve(cr);
    set_colour(cr, colours.text);
    cairo_set_line_width(cr, 1.4);
    cairo_stroke(cr);
}

void draw_legend(cairo_t* cr, const TimelineLayout& layout, const Timeline& data, const ChartColours& colours) {
    for (const PlacedSwatch& swatch : layout.legend) {
        const auto& what = data.legend[swatch.item].what;
        const Box& box = swatch.box;
        if (const auto* const shade = std::get_if<Shade>(&what))
            paint_box(cr, box, paint_of(*shade, colours), colours);
        else
            draw_sign(cr, box.x + box.width / 2, box.y + box.height / 2, std::get<Sign>(what), colours);
        set_colour(cr, colours.text);
        put(cr, swatch.name);
    }
}

std::string days_told(const TimelineSpan& span) {
    if (span.to <= span.from) return shown_date(span.from);
    return say("{first} to {last}", arg("first", shown_date(span.from)), arg("last", shown_date(span.to)));
}

std::string tip_of(const std::string& row, const std::string& word, const std::string& when) {
    if (word.empty()) return say("{row}: {when}", arg("row", row), arg("when", when));
    return say("{row}: {word}, {when}", arg("row", row), arg("word", word), arg("when", when));
}

}  // namespace

void draw_timeline(cairo_t* cr, double width, double height, const Timeline& data, const ChartColours& colours) {
    const TimelineLayout layout = lay_out_timeline(width, height, data);
    if (layout.natural_height == 0) return;
    cairo_save(cr);
    cairo_set_line_width(cr, kOutline);
    set_colour(cr, colours.quiet);
    for (const PlacedDayTick& tick : layout.ticks) line(cr, tick.x, layout.plot_top, tick.x, tick.label.bottom());
    line(cr, layout.plot_left, layout.plot_bottom, layout.plot_right, layout.plot_bottom);
    cairo_stroke(cr);
    set_colour(cr, colours.text);
    for (const PlacedDayTick& tick : layout.ticks) {
        put(cr, tick.label);
        if (tick.year) put(cr, *tick.year);
    }
    for (const PlacedText& label : layout.labels) put(cr, label);
    for (const PlacedText& figure : layout.figures) put(cr, figure);
    for (const PlacedSpan& placed : layout.spans) {
        const Paint paint = paint_of(data.rows[placed.row].spans[placed.span].shade, colours);
        paint_box(cr, placed.box, paint, colours);
    }
    if (layout.today) {
        set_colour(cr, colours.mark);
        cairo_set_line_width(cr, 2);
        line(cr, layout.today->x, layout.today->label.bottom(), layout.today->x, layout.plot_bottom);
        stroke_with_rim(cr, colours);
        put(cr, layout.today->label);
    }
    for (const PlacedSpan& placed : layout.spans) {
        if (!placed.word) continue;
        const Paint paint = paint_of(data.rows[placed.row].spans[placed.span].shade, colours);
        const bool crossed = layout.today && layout.today->x > placed.word->x && layout.today->x < placed.word->right();
        if (paint.hatch == Hatch::none && !crossed) {
            set_colour(cr, ink_on(paint.fill));
            put(cr, *placed.word);
        } else {
            put_on_paper(cr, *placed.word, colours, colours.text);
        }
    }
    for (const PlacedSign& placed : layout.signs)
        draw_sign(cr, placed.x, placed.y, data.rows[placed.row].signs[placed.sign].sign, colours);
    draw_legend(cr, layout, data, colours);
    cairo_restore(cr);
}

double timeline_height(double width, const Timeline& data) {
    return std::ceil(lay_out_timeline(width, 0, data).natural_height);
}

std::string timeline_tip(double x, double y, double width, double height, const Timeline& data) {
    const TimelineLayout layout = lay_out_timeline(width, height, data);
    const PlacedSign* nearest = nullptr;
    for (const PlacedSign& sign : layout.signs) {
        if (std::abs(sign.x - x) > kSignRadius + 1 || std::abs(sign.y - y) > kSignRadius + 2) continue;
        if (nearest == nullptr || std::abs(sign.x - x) <= std::abs(nearest->x - x)) nearest = &sign;
    }
    if (nearest != nullptr) {
        const TimelineRow& row = data.rows[nearest->row];
        return tip_of(row.label, row.signs[nearest->sign].word, shown_date(row.signs[nearest->sign].on));
    }
    // Of two bars the one drawn upon the other.
    for (auto placed = layout.spans.rbegin(); placed != layout.spans.rend(); ++placed) {
        if (!placed->box.holds(x, y)) continue;
        const TimelineRow& row = data.rows[placed->row];
        const TimelineSpan& span = row.spans[placed->span];
        return tip_of(row.label, span.word, days_told(span));
    }
    // A word that was cut can be read whole.
    for (std::size_t r = 0; r < layout.labels.size(); ++r) {
        const double top = layout.plot_top + static_cast<double>(r) * layout.row_height;
        if (y >= top && y < top + layout.row_height && x >= 0 && x < layout.plot_left) return data.rows[r].label;
    }
    return {};
}

}  // namespace dyestead::reports
