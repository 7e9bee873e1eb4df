// restore.h - a shop file cannot be read: is there a backup of it, and how does one go on with that?
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "domain/values/date.h"

namespace dyestead::db {

struct Backup {
    std::filesystem::path path;
    Day taken{};
};

// The newest backup of the file at `path`, found by the file's own id as far as that can still be read.
std::optional<Backup> newest_backup(const std::filesystem::path& path) noexcept;

// Copies the backup beside the damaged file, under a name of its own ("shop, backup of 2026-07-03.dyestead"), and says
// where it is; the damaged file stays as it is. Throws: ShopTrouble where nothing can be written there.
std::filesystem::path lay_beside(const Backup& backup, const std::filesystem::path& damaged);

}  // namespace dyestead::db
