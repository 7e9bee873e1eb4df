// pdf_pieces.h - a document cut into pieces that a page end may fall between.
//
// A piece is at most a line of text high (a picture is one piece), so that nothing is ever cut
// off, however long a cell or a paragraph is. Which page a piece comes to is not known here.
#pragma once

#include <functional>
#include <vector>

#include "reports/document.h"
#include "reports/write/pdf_paginate.h"

using cairo_t = struct _cairo;

namespace dyestead::reports {

struct PdfPiece {
    PieceFlow flow;
    // Draws with the top left corner of the piece at (x, y).
    std::function<void(cairo_t* cr, double x, double y)> draw;
};

// In points. The document must outlive the pieces. `height` is what a page holds: no piece is higher.
std::vector<PdfPiece> pdf_pieces(const Document& document, double width, double height);

}  // namespace dyestead::reports
