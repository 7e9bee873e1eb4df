// backup.h - where do backups lie, and how is one taken?
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "db/open_shop.h"

namespace dyestead::db {

// $XDG_DATA_HOME/dyestead/backups/<the shop file's id>, or under ~/.local/share.
std::filesystem::path backup_folder(const std::string& file_id);
// As this program makes it up, so that it can name a folder.
bool is_file_id(std::string_view text);
// In that folder, which is made where it is not there: the day's name that nothing has yet (2026-07-03.dyestead; a
// second one of a day -2). Throws: ShopTrouble.
std::filesystem::path place_for_backup(const std::string& file_id);

// Takes a verified copy named after the day and says where it is.
// Throws: ShopTrouble.
std::filesystem::path take_backup(OpenShop& shop);

// Before the first change of a day: takes one unless there is one of today, and clears away old ones: of the last 14
// days all stay, of each month before the first. Throws: ShopTrouble; changes may be made all the same.
void back_up_once_a_day(OpenShop& shop);

// Which of these names of backups to clear away, seen on a day. Names that are not backups' stay.
std::vector<std::string> old_backups(std::vector<std::string> names, Day today);

}  // namespace dyestead::db
