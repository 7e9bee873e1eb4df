// write_file.h - a file that is either there in full under its name, or not touched at all.
#pragma once

#include <filesystem>
#include <string_view>

namespace dyestead::console {

// Written beside its place under another name, then renamed over it. What is no plain file (a pipe,
// a terminal) is written straight into.
// Throws: ShopTrouble no_such_folder, disk_full, cannot_write.
void write_file(const std::filesystem::path& path, std::string_view bytes);

// Throws: ShopTrouble cannot_write, disk_full.
void write_to_stdout(std::string_view bytes);

}  // namespace dyestead::console
