// shelf_picture.h - the curing shelf as a picture: one row for each lot in cure or on hold, filled as its days go by.
#pragma once

#include <optional>

#include "gui/models/books.h"
#include "reports/document.h"

namespace dyestead::gui {

// Nothing where no bars are in cure and none on hold.
std::optional<reports::Chart> shelf_picture(const Books& books);

}  // namespace dyestead::gui
