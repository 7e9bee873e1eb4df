// printing.h - hands a paper to the desktop's own printing, which asks for the printer, the pages and how many.
#pragma once

#include <wx/window.h>

#include "reports/document.h"

namespace dyestead::gui {

enum class Printed { yes, thought_better, no };

Printed print_document(wxWindow* parent, const reports::Document& document);

}  // namespace dyestead::gui
