// drawing_figures.h - what does a picture show, as a list? For screen readers, for print, and for doubters.
#pragma once

#include "reports/document.h"

namespace dyestead::reports {

// Stacked bars: a row for each part, a column for each bar. Timeline: a row for each bar and each sign upon it, in the
// order of the days. Curve: a row for each point of the axis, a column for each line; marks and band stand below.
Table figures_of(const Drawing& drawing);

}  // namespace dyestead::reports
