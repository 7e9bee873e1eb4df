// csv.h - rows and cells of CSV text as RFC 4180 has it, and back.
// Reads LF and CRLF, a byte-order mark and quoted commas, quotes and line breaks in silence; writes
// CRLF and quotes only where it must. Knows no files and no meaning: see db/csv_folder.h.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/text/trouble.h"

namespace dyestead {

struct CsvCell {
    std::string text;
    int line = 1;  // where it begins, counted from 1
};

using CsvRow = std::vector<CsvCell>;  // the column of a cell is its place in the row

struct CsvText {
    std::vector<CsvRow> rows;       // rows of nothing at all are left out
    std::vector<Trouble> troubles;  // with line, and column as a number counted from 1
};

// After quote_not_closed or not_utf8 nothing more is read.
CsvText read_csv(std::string_view text);

void add_csv_row(std::string& out, const std::vector<std::string>& cells);

}  // namespace dyestead
