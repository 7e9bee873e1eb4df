// xlsx.h - a document as a workbook of Office Open XML (ECMA-376), for a spreadsheet: numbers stay numbers.
#pragma once

#include <string>

#include "reports/document.h"

namespace dyestead::reports {

// A sheet with the sentences, one for each table, one with the figures and one with what does not add up. Numbers are
// unrounded and shown with the places they have on paper. The same document gives the same bytes.
// Throws: std::logic_error for a number that is not finite; std::runtime_error when it cannot be put together.
std::string write_xlsx(const Document& document);

}  // namespace dyestead::reports
