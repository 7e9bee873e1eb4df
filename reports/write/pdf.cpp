#include "reports/write/pdf.h"

#include <cairo-pdf.h>
#include <fmt/format.h>

#include <memory>
#include <stdexcept>

#include "reports/chart/text_box.h"
#include "reports/write/labels.h"
#include "reports/write/pdf_paginate.h"
#include "reports/write/pdf_pieces.h"
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

void draw_footer(cairo_t* cr, const Document& document, std::size_t page, std::size_t pages) {
    const TextBox number{page_of(page, pages), pdf::kSmall};
    const double y = pdf::kPageHeight - pdf::kMarginBottom + 20;
    cairo_set_source_rgb(cr, pdf::kSoft, pdf::kSoft, pdf::kSoft);
    number.draw(cr, pdf::kPageWidth - pdf::kMarginSide - number.width(), y);
    // The title again, so that loose sheets find together; a long one would only be cut off.
    const TextBox title{document.title, pdf::kSmall};
    if (title.line_count() == 1 && title.width() < pdf::kTextWidth - number.width() - 20) {
        title.draw(cr, pdf::kMarginSide, y);
    }
}

}  // namespace

std::string write_pdf(const Document& document) {
    const std::vector<PdfPiece> pieces = pdf_pieces(document, pdf::kTextWidth, pdf::kTextHeight);
    std::vector<PieceFlow> flows;
    for (const PdfPiece& piece : pieces) flows.push_back(piece.flow);
    const std::vector<PlacedPiece> placed = paginate(flows, pdf::kTextHeight);

    std::string bytes;
    std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> surface{
        cairo_pdf_surface_create_for_stream(append, &bytes, pdf::kPageWidth, pdf::kPageHeight), cairo_surface_destroy};
    set_metadata(surface.get(), document);
    std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cr{cairo_create(surface.get()), cairo_destroy};
    const std::size_t pages = placed.empty() ? 1 : placed.back().page + 1;
    std::size_t next = 0;
    for (std::size_t page = 0; page < pages; ++page) {
        for (; next < placed.size() && placed[next].page == page; ++next) {
            pieces[placed[next].piece].draw(cr.get(), pdf::kMarginSide, pdf::kMarginTop + placed[next].y);
        }
        draw_footer(cr.get(), document, page + 1, pages);
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
