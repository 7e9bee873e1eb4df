// open_shop.h - opens a shop file for a command; where that brought up a file of an earlier version, a line on stderr
// says so. A command that writes first asks whether a window has the shop open.
#pragma once

#include <string>
#include <string_view>

#include "db/claim.h"
#include "db/open_shop.h"

namespace dyestead::console {

// Throws: ShopTrouble.
db::OpenShop open_shop(const std::string& path, db::Access access);

// Under this name a command that writes holds the shop for as long as it takes, as a window does.
inline constexpr std::string_view kConsole = "dyestead-books";
// True where somebody else has the shop open; then who it is stands on stderr.
bool is_held_elsewhere(const std::string& path, const db::Claim& claim);

void say_if_brought_up(const std::string& path, const std::optional<db::BroughtUp>& brought_up);

}  // namespace dyestead::console
