// open_shop.h - opens a shop file for a command; where that brought up a file of an earlier version, a line on stderr
// says so.
#pragma once

#include <string>

#include "db/open_shop.h"

namespace dyestead::console {

// Throws: ShopTrouble.
db::OpenShop open_shop(const std::string& path, db::Access access);

void say_if_brought_up(const std::string& path, const std::optional<db::BroughtUp>& brought_up);

}  // namespace dyestead::console
