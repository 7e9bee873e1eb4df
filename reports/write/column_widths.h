// column_widths.h - how wide does each column of a table become when the page is narrower?
//
// Used for characters (text) and for Pango units (PDF) alike.
#pragma once

#include <vector>

namespace dyestead::reports {

struct ColumnNeed {
    int natural = 0;  // with nothing wrapped
    int least = 0;    // its longest word
};

// The natural widths where they fit in `available`. Else the longest columns give way first, none
// below its longest word; where even those words do not fit they will have to break, again the
// longest first. No column is below 1; the sum passes `available` only where that forces it.
std::vector<int> fit_columns(std::vector<ColumnNeed> needs, int available);

// Whether no word has to be broken.
bool columns_fit(const std::vector<ColumnNeed>& needs, int available);

}  // namespace dyestead::reports
