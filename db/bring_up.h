// bring_up.h - how does a shop file that an earlier version of this program made become one of this version?
// A verified backup first, kept where all are. Then, in one transaction, today's tables are made and the rows copied
// into them by the names of their columns: what was added since is blank, keys stay, every limit is looked at anew, the
// seals are made afresh. What earlier tables looked like is read off the file, so no list of steps has to be kept.
// The log stays, but Undo does not reach past this (history.h): it names columns by their place.
#pragma once

#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <optional>

#include "db/open_shop.h"

namespace dyestead::db {

// `reader`: an open connection to the file at `path`, in no transaction. Nothing is done to a file of today's version.
// Throws: ShopTrouble; the file is then as it was.
std::optional<BroughtUp> bring_up(SQLite::Database& reader, const std::filesystem::path& path);

}  // namespace dyestead::db
