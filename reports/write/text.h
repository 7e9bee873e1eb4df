// text.h - a document as plain text, 80 columns wide, for a terminal or a mail.
#pragma once

#include <string>

#include "reports/document.h"

namespace dyestead::reports {

// UTF-8, lines end in LF. A picture is its sentence; figures are not listed.
std::string write_text(const Document& document);

}  // namespace dyestead::reports
