#include "reports/chart/drawing.h"

#include "reports/overloaded.h"

namespace dyestead::reports {

void draw(cairo_t* cr, double width, double height, const Drawing& drawing, const ChartColours& colours) {
    std::visit(Overloaded{[&](const StackedBars& data) { draw_stacked_bars(cr, width, height, data, colours); },
                          [&](const Timeline& data) { draw_timeline(cr, width, height, data, colours); },
                          [&](const Curve& data) { draw_curve(cr, width, height, data, colours); }},
               drawing);
}

double drawing_height(double width, const Drawing& drawing) {
    return std::visit(Overloaded{[&](const StackedBars& data) { return stacked_bars_height(width, data); },
                                 [&](const Timeline& data) { return timeline_height(width, data); },
                                 [&](const Curve& data) { return curve_height(width, data); }},
                      drawing);
}

std::string drawing_tip(double x, double y, double width, double height, const Drawing& drawing) {
    return std::visit(Overloaded{[&](const StackedBars& data) { return stacked_bars_tip(x, y, width, height, data); },
                                 [&](const Timeline& data) { return timeline_tip(x, y, width, height, data); },
                                 [&](const Curve& data) { return curve_tip(x, y, width, height, data); }},
                      drawing);
}

}  // namespace dyestead::reports
