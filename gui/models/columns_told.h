// columns_told.h - which columns of a table have something to say?
#pragma once

#include "reports/document.h"

namespace dyestead::gui {

// The table without the columns in which no row has a value: they take room from those that have. The first stays.
reports::Table columns_told(reports::Table table);

}  // namespace dyestead::gui
