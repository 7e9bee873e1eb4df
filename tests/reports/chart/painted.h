// How much of a picture has a drawing touched, and does it stay within its bounds?
#pragma once

#include <cairo.h>

#include <algorithm>
#include <memory>

#include "reports/chart/drawing.h"

namespace dyestead::reports {

// The points of a picture of this size that are not bare.
inline std::size_t painted(const Drawing& drawing, int width, int height) {
    const std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface{
        cairo_image_surface_create(CAIRO_FORMAT_A8, width, height), cairo_surface_destroy};
    const std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cr{cairo_create(surface.get()), cairo_destroy};
    draw(cr.get(), width, height, drawing, light_chart_colours());
    if (cairo_status(cr.get()) != CAIRO_STATUS_SUCCESS) return 0;
    cairo_surface_flush(surface.get());
    const unsigned char* bytes = cairo_image_surface_get_data(surface.get());
    const auto size =
        static_cast<std::size_t>(cairo_image_surface_get_stride(surface.get())) * static_cast<std::size_t>(height);
    return size - static_cast<std::size_t>(std::count(bytes, bytes + size, 0));
}

// What the ink of the drawing spans, wherever it goes.
struct Ink {
    double left = 0;
    double top = 0;
    double right = 0;
    double bottom = 0;
};

inline Ink ink_of(const Drawing& drawing, double width, double height) {
    const std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface{
        cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, nullptr), cairo_surface_destroy};
    const std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cr{cairo_create(surface.get()), cairo_destroy};
    draw(cr.get(), width, height, drawing, light_chart_colours());
    double x = 0;
    double y = 0;
    double across = 0;
    double down = 0;
    cairo_recording_surface_ink_extents(surface.get(), &x, &y, &across, &down);
    return {x, y, x + across, y + down};
}

}  // namespace dyestead::reports
