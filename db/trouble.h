// trouble.h - what went wrong with a shop file or a folder of records?
// ShopTrouble: the surroundings (a file, a disk, another program); one trouble, as a code with its
// particulars. RecordsRefused: the records themselves; every trouble found in the folder.
// The sentences are made in reports/words. A failure that is our own bug is a std::logic_error.
#pragma once

#include <filesystem>
#include <stdexcept>
#include <utility>
#include <vector>

#include "domain/text/trouble.h"

namespace SQLite {
class Exception;
}

namespace dyestead::db {

struct ShopTrouble : std::runtime_error {
    explicit ShopTrouble(Trouble what) : std::runtime_error("shop trouble"), trouble{std::move(what)} {}
    // The usual particular: {"path", ...}.
    ShopTrouble(TroubleId id, const std::filesystem::path& path, std::vector<TroubleArg> more = {});
    Trouble trouble;
};

struct RecordsRefused : std::runtime_error {
    explicit RecordsRefused(std::vector<Trouble> all)
        : std::runtime_error("records refused"), troubles{std::move(all)} {}
    std::vector<Trouble> troubles;  // never empty; in order of file and line
};

// The one place that turns SQLite's codes into troubles.
[[noreturn]] void throw_trouble(const SQLite::Exception& error, const std::filesystem::path& path);

}  // namespace dyestead::db
