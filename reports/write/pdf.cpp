#include "reports/write/pdf.h"

#include <cairo-pdf.h>
#include <fmt/format.h>

#include <memory>
#include <stdexcept>

#include "reports/write/paper_pages.h"
#include "reports/write/pdf_style.h"

namespace dyestead::reports {
namespace {

cairo_status_t append(void* closure, const unsigned char* data, unsigned int length) {
    static_cast<std::string*>(closure)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

void set_metadata(cairo_surface_t* surface, const Document& document) {
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE, document.title.c_str());
    cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATOR, "Dyestead");
    // The day reported on, not the day printed on: the same books give the same file.
    cairo_pdf_surface_set_metadata(
        surface, CAIRO_PDF_METADATA_CREATE_DATE, fmt::format("{}T00:00:00Z", document.as_of).c_str());
}

}  // namespace

std::string write_pdf(const Document& document) {
    const PaperPages pages{document};
    std::string bytes;
    std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface{
        cairo_pdf_surface_create_for_stream(append, &bytes, pdf::kPageWidth, pdf::kPageHeight), cairo_surface_destroy};
    set_metadata(surface.get(), document);
    std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cr{cairo_create(surface.get()), cairo_destroy};
    for (std::size_t page = 0; page < pages.count(); ++page) {
        pages.draw(cr.get(), page);
        cairo_show_page(cr.get());
    }
    const cairo_status_t drawn = cairo_status(cr.get());
    cr.reset();
    cairo_surface_finish(surface.get());
    const cairo_status_t finished = cairo_surface_status(surface.get());
    if (const auto status = drawn != CAIRO_STATUS_SUCCESS ? drawn : finished; status != CAIRO_STATUS_SUCCESS) {
        throw std::runtime_error(fmt::format(
            "The PDF could not be drawn ({}); close other programs and try again.", cairo_status_to_string(status)));
    }
    return bytes;
}

}  // namespace dyestead::reports
