// html.h - a document as one HTML file that needs nothing else: styles and pictures inside.
#pragma once

#include <string>

#include "reports/document.h"

namespace dyestead::reports {

// UTF-8. Follows the reader's light or dark setting on screen, fits a telephone, prints on A4
// always light.
std::string write_html(const Document& document);

}  // namespace dyestead::reports
