// csv.h - a document's figures and tables as one CSV file (RFC 4180), for a spreadsheet.
#pragma once

#include <string>

#include "reports/document.h"

namespace dyestead::reports {

// UTF-8, lines end in CRLF, decimal point. First report, as_of, currency and the figures, one
// "key,value" a line; then every table: its title, its headings, its rows; findings last.
// An empty line stands between them. Numbers are unrounded.
// Throws: std::logic_error for a number that is not finite.
std::string write_csv(const Document& document);

}  // namespace dyestead::reports
