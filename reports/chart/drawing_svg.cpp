#include "reports/chart/drawing_svg.h"

#include <cairo-svg.h>
#include <fmt/format.h>

#include <array>
#include <memory>
#include <stdexcept>

#include "reports/chart/xml_escape.h"

namespace dyestead::reports {
namespace {

// Narrow, so that the words can still be read where a telephone scales it down.
constexpr double kWidth = 520;

cairo_status_t append(void* closure, const unsigned char* data, unsigned int length) {
    static_cast<std::string*>(closure)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

std::string drawn(const Drawing& drawing, double height, const ChartColours& colours) {
    std::string bytes;
    std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface{
        cairo_svg_surface_create_for_stream(append, &bytes, kWidth, height), cairo_surface_destroy};
    cairo_svg_surface_restrict_to_version(surface.get(), CAIRO_SVG_VERSION_1_2);
    std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cr{cairo_create(surface.get()), cairo_destroy};
    // Half an outline stays inside on the left.
    cairo_translate(cr.get(), 1, 1);
    draw(cr.get(), kWidth - 2, height - 2, drawing, colours);
    cr.reset();
    cairo_surface_finish(surface.get());
    if (const cairo_status_t status = cairo_surface_status(surface.get()); status != CAIRO_STATUS_SUCCESS) {
        throw std::runtime_error(
            fmt::format("The chart could not be drawn as SVG: {}; try again.", cairo_status_to_string(status)));
    }
    return bytes;
}

// Cairo names the whole drawing after a count of all surfaces the program has made, which would
// make each run's bytes another; nothing refers to that name.
void drop_surface_id(std::string& svg) {
    const std::size_t id = svg.find(" id=\"surface");
    if (id == std::string::npos) return;
    svg.erase(id, svg.find('"', id + 5) + 1 - id);
}

// Puts the prefix before every id and every use of one.
std::string with_own_ids(std::string_view svg, std::string_view prefix) {
    constexpr std::array<std::string_view, 3> kBefore{" id=\"", "href=\"#", "url(#"};
    std::string out;
    out.reserve(svg.size() + svg.size() / 4);
    for (std::size_t at = 0; at < svg.size();) {
        std::size_t matched = 0;
        for (const std::string_view before : kBefore) {
            if (svg.substr(at, before.size()) == before) matched = before.size();
        }
        if (matched == 0) {
            out += svg[at++];
            continue;
        }
        out.append(svg.substr(at, matched)).append(prefix);
        at += matched;
    }
    return out;
}

}  // namespace

std::string drawing_svg(const Drawing& drawing, std::string_view sentence, const ChartColours& colours,
                        std::string_view id_prefix) {
    const double natural = drawing_height(kWidth - 2, drawing);
    if (natural == 0) return {};
    const double height = natural + 2;
    std::string file = drawn(drawing, height, colours);
    drop_surface_id(file);
    // The XML declaration and cairo's own <svg> tag, which fixes a size in points, are replaced.
    const std::size_t tag = file.find("<svg");
    const std::size_t tag_end = file.find('>', tag);
    if (tag == std::string::npos || tag_end == std::string::npos) {
        throw std::logic_error("cairo wrote an SVG file without an <svg> element");
    }
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\""
        " viewBox=\"0 0 {} {}\" width=\"100%\" role=\"img\" aria-label=\"{}\">{}",
        kWidth, height, xml_escape(sentence), with_own_ids(std::string_view{file}.substr(tag_end + 1), id_prefix));
}

}  // namespace dyestead::reports
