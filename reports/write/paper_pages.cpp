#include "reports/write/paper_pages.h"

#include <cairo.h>

#include <utility>

#include "reports/chart/text_box.h"
#include "reports/write/labels.h"
#include "reports/write/pdf_style.h"

namespace dyestead::reports {
namespace {

std::vector<PlacedPiece> placed(const std::vector<PdfPiece>& pieces, double height) {
    std::vector<PieceFlow> flows;
    flows.reserve(pieces.size());
    for (const PdfPiece& piece : pieces) flows.push_back(piece.flow);
    return paginate(flows, height);
}

}  // namespace

PaperPages::PaperPages(Document document)
    : document_{std::move(document)},
      scale_{document_.larger ? pdf::kLarger : 1.0},
      pieces_{pdf_pieces(document_, pdf::kTextWidth / scale_, pdf::kTextHeight / scale_)},
      placed_{placed(pieces_, pdf::kTextHeight / scale_)},
      pages_{placed_.empty() ? 1 : placed_.back().page + 1} {}

void PaperPages::draw(cairo_t* cr, std::size_t page) const {
    cairo_save(cr);
    cairo_translate(cr, pdf::kMarginSide, pdf::kMarginTop);
    cairo_scale(cr, scale_, scale_);
    for (const PlacedPiece& place : placed_)
        if (place.page == page) pieces_[place.piece].draw(cr, 0, place.y);
    cairo_restore(cr);
    draw_footer(cr, page);
}

void PaperPages::draw_footer(cairo_t* cr, std::size_t page) const {
    const TextBox number{page_of(page + 1, pages_), pdf::kSmall};
    const double y = pdf::kPageHeight - pdf::kMarginBottom + 20;
    cairo_set_source_rgb(cr, pdf::kSoft, pdf::kSoft, pdf::kSoft);
    number.draw(cr, pdf::kPageWidth - pdf::kMarginSide - number.width(), y);
    // The title again, so that loose sheets find together; a long one would only be cut off.
    const TextBox title{document_.title, pdf::kSmall};
    if (title.line_count() == 1 && title.width() < pdf::kTextWidth - number.width() - 20) {
        title.draw(cr, pdf::kMarginSide, y);
    }
}

}  // namespace dyestead::reports
