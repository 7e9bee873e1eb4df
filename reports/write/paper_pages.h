// paper_pages.h - a document laid out on A4: how many pages are there, and what does each look like? The PDF, the
// preview and the printer all draw from here, so that they cannot differ.
#pragma once

#include <cstddef>
#include <vector>

#include "reports/document.h"
#include "reports/write/pdf_pieces.h"

namespace dyestead::reports {

class PaperPages {
public:
    explicit PaperPages(Document document);
    PaperPages(const PaperPages&) = delete;  // the pieces point into the document
    PaperPages& operator=(const PaperPages&) = delete;
    ~PaperPages() = default;

    // One at least.
    std::size_t count() const { return pages_; }
    // With the page's top left corner at the origin, one unit a point. `page` counts from 0.
    void draw(cairo_t* cr, std::size_t page) const;
    const Document& document() const { return document_; }

private:
    void draw_footer(cairo_t* cr, std::size_t page) const;

    Document document_;
    double scale_;
    std::vector<PdfPiece> pieces_;
    std::vector<PlacedPiece> placed_;
    std::size_t pages_;
};

}  // namespace dyestead::reports
