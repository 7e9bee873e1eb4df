// load.h - reads everything that a shop file holds, and checks it against the seals.
#pragma once

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <filesystem>
#include <string>

#include "db/seal.h"
#include "domain/facts/shop.h"

namespace dyestead::db {

struct Loaded {
    Shop shop;
    Seals seals;
    std::string file_id;
    std::int64_t last_change = 0;   // id of the newest entry of the log
    std::int64_t data_version = 0;  // SQLite's mark of what other programs have committed
};

// Requires: a transaction, so that all of it is of one moment.
// Throws: ShopTrouble shop_damaged, with the table's name where one does not match its seal.
Loaded load(SQLite::Database& db, const std::filesystem::path& path);

// The facts alone, whatever the seals say.
Shop load_facts(SQLite::Database& db, const std::filesystem::path& path);

std::int64_t last_change(SQLite::Database& db);
std::int64_t data_version(SQLite::Database& db);

}  // namespace dyestead::db
