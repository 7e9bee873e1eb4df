// pdf_labels.h - the rows of a table as labels to cut out, two beside each other.
#pragma once

#include <vector>

#include "reports/write/pdf_pieces.h"

namespace dyestead::reports {

// Appends to `pieces`; no label runs over a page's end.
void add_label_pieces(std::vector<PdfPiece>& pieces, const Table& table, double width);

}  // namespace dyestead::reports
