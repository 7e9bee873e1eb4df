// pdf.h - a document as an A4 PDF, to print or to send.
#pragma once

#include <string>

#include "reports/document.h"

namespace dyestead::reports {

// The file's bytes; the same document gives the same bytes. Fonts are embedded, text can be
// searched, a table that runs over the page repeats its headings, every page says which of how
// many it is.
// Throws: std::runtime_error when the PDF cannot be drawn (no font, no memory).
std::string write_pdf(const Document& document);

}  // namespace dyestead::reports
