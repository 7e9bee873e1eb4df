// backup.h - where do backups lie, and how is one taken?
#pragma once

#include <filesystem>

#include "db/open_shop.h"

namespace dyestead::db {

// $XDG_DATA_HOME/dyestead/backups/<the shop file's id>, or under ~/.local/share.
std::filesystem::path backup_folder(const OpenShop& shop);

// Takes a verified copy named after the day (2026-07-03.dyestead; a second one of a day -2) and says where it is.
// Throws: ShopTrouble.
std::filesystem::path take_backup(OpenShop& shop);

}  // namespace dyestead::db
