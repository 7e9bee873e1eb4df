// pdf_table.h - a table as pieces: its title, its headings, and every row line by line.
#pragma once

#include <vector>

#include "reports/write/pdf_pieces.h"

namespace dyestead::reports {

// Appends to `pieces`; rows that start a page have the headings above them again.
void add_table_pieces(std::vector<PdfPiece>& pieces, const Table& table, double width);

}  // namespace dyestead::reports
