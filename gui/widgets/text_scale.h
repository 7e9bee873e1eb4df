// text_scale.h - how much larger than usual is the desktop's text, and how wide does a control have to be for it?
#pragma once

#include <wx/window.h>

namespace dyestead::gui {

// 1 at ten points, the size the widths in the sources are drawn for; never less.
double text_scale(const wxWindow& window);
// So many pixels at ten points, more where the text is larger; -1 stays -1.
int for_text(const wxWindow& window, int pixels);

}  // namespace dyestead::gui
