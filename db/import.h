// import.h - a folder of records into a shop file, all of it or nothing.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>

#include "db/open_shop.h"

namespace dyestead::db {

enum class Existing : std::uint8_t { refuse, replace };

// The folder is read and checked in full first. A file that exists is refused (already_there) or its
// contents are replaced: as one change in its log, after a verified backup. A file that cannot be
// opened as a shop is never replaced. One of an earlier version is brought up, and what that did is told.
// Throws: RecordsRefused, ShopTrouble; the shop file is then as it was.
std::optional<BroughtUp> import_folder(const std::filesystem::path& folder, const std::filesystem::path& shop_file,
                                       Existing existing);

}  // namespace dyestead::db
