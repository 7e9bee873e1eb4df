// connection.h - how is a shop file opened so that it stays whole and can be trusted?
#pragma once

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

#include "db/open_shop.h"
#include "db/trouble.h"

namespace dyestead::db {

inline constexpr std::uint32_t kApplicationId = 0x44594531;  // "DYE1"
// Goes up with every change of schema.sql; tests/db/schema_test.cpp holds the two together.
inline constexpr std::uint32_t kSchemaVersion = 4;
inline constexpr std::uint32_t kOldestSchemaVersion = 2;  // that can be brought up

// What people may lay out differently without changing a table.
std::string without_comments_and_blanks(std::string_view sql);

// The file's first bytes are looked at before it is opened: what is not ours, or is newer, stays
// untouched. Throws: ShopTrouble.
SQLite::Database connect(const std::filesystem::path& path, Access access);

// Of which version the file's tables are.
std::uint32_t schema_version(SQLite::Database& db);

// All pages as they stand, into a file that is not there yet. Throws: ShopTrouble.
void copy_pages(SQLite::Database& from, const std::filesystem::path& to);

// A new, empty file with our tables. Throws: ShopTrouble.
SQLite::Database connect_new(const std::filesystem::path& path);

// Tables, triggers or views that our own schema does not make: shop_foreign_table; pages that are
// missing at the end: shop_damaged.
void check_schema(SQLite::Database& db, const std::filesystem::path& path);

// Runs what talks to SQLite; its failures come out as troubles of this file.
template <class Run>
auto guarded(const std::filesystem::path& path, Run&& run) {
    try {
        return run();
    } catch (const SQLite::Exception& error) {
        throw_trouble(error, path);
    }
}

}  // namespace dyestead::db
