#include "db/connection.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <string>
#include <system_error>
#include <vector>

#include "db/schema_sql.h"

namespace dyestead::db {
namespace {

constexpr int kBusyMilliseconds = 2'000;
using Header = std::array<unsigned char, 100>;

// Read by SQLite's own file layer: closing a file by hand drops the locks that this process holds on it.
Header read_header(const std::filesystem::path& path) {
    sqlite3_vfs* files = sqlite3_vfs_find(nullptr);
    std::vector<std::max_align_t> room(static_cast<std::size_t>(files->szOsFile) / sizeof(std::max_align_t) + 1);
    auto* file = reinterpret_cast<sqlite3_file*>(room.data());
    const char* name = sqlite3_create_filename(path.c_str(), "", "", 0, nullptr);
    Header header{};
    int flags = 0;
    int result = files->xOpen(files, name, file, SQLITE_OPEN_READONLY | SQLITE_OPEN_MAIN_DB, &flags);
    if (result == SQLITE_OK) result = file->pMethods->xRead(file, header.data(), header.size(), 0);
    if (file->pMethods) file->pMethods->xClose(file);
    sqlite3_free_filename(const_cast<char*>(name));
    if (result == SQLITE_IOERR_SHORT_READ) throw ShopTrouble{TroubleId::not_a_shop, path};
    if (result != SQLITE_OK) throw ShopTrouble{TroubleId::cannot_read, path};
    return header;
}

std::uint32_t big_endian(const Header& header, std::size_t at) {
    std::uint32_t number = 0;
    for (std::size_t i = 0; i < 4; ++i) number = number << 8 | header[at + i];
    return number;
}

void look_before_opening(const std::filesystem::path& path) {
    std::error_code error;
    const auto status = std::filesystem::status(path, error);
    if (status.type() == std::filesystem::file_type::not_found) throw ShopTrouble{TroubleId::no_such_file, path};
    if (!std::filesystem::is_regular_file(status)) throw ShopTrouble{TroubleId::cannot_read, path};
    const auto size = std::filesystem::file_size(path, error);
    if (error) throw ShopTrouble{TroubleId::cannot_read, path};
    if (size == 0) throw ShopTrouble{TroubleId::file_empty, path};
    const Header header = read_header(path);
    constexpr std::string_view kMagic{"SQLite format 3\0", 16};
    const bool database = std::equal(kMagic.begin(), kMagic.end(), header.begin());
    if (!database || big_endian(header, 68) != kApplicationId) throw ShopTrouble{TroubleId::not_a_shop, path};
    if (big_endian(header, 60) > kSchemaVersion) throw ShopTrouble{TroubleId::shop_newer, path};
}

void set_up(SQLite::Database& db) {
    db.exec("PRAGMA foreign_keys = ON");
    db.exec("PRAGMA journal_mode = DELETE");
    db.exec("PRAGMA synchronous = EXTRA");
    db.exec("PRAGMA locking_mode = NORMAL");
    db.exec("PRAGMA trusted_schema = OFF");
    db.exec("PRAGMA cell_size_check = ON");
    sqlite3* handle = db.getHandle();
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_limit(handle, SQLITE_LIMIT_ATTACHED, 0);
    sqlite3_limit(handle, SQLITE_LIMIT_TRIGGER_DEPTH, 0);
}

bool same_sql(std::string_view a, std::string_view b) {
    return a == b || without_comments_and_blanks(a) == without_comments_and_blanks(b);
}

std::map<std::string, std::string> things_in(SQLite::Database& db) {
    std::map<std::string, std::string> things;
    SQLite::Statement query{db, "SELECT name, type || tbl_name || ifnull(sql, '') FROM sqlite_schema"};
    while (query.executeStep()) things[query.getColumn(0).getString()] = query.getColumn(1).getString();
    return things;
}

}  // namespace

std::string without_comments_and_blanks(std::string_view sql) {
    std::string bare;
    bool comment = false;
    for (std::size_t i = 0; i < sql.size(); ++i) {
        if (sql.substr(i, 2) == "--") comment = true;
        if (sql[i] == '\n') comment = false;
        if (!comment && sql[i] != ' ' && sql[i] != '\n') bare += sql[i];
    }
    return bare;
}

SQLite::Database connect(const std::filesystem::path& path, Access access) {
    look_before_opening(path);
    return guarded(path, [&] {
        // Opened for writing even for a reader, who may have to finish what a crash interrupted.
        SQLite::Database db{path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_NOMUTEX, kBusyMilliseconds};
        set_up(db);
        if (access == Access::read_only) db.exec("PRAGMA query_only = ON");
        if (access == Access::read_write && sqlite3_db_readonly(db.getHandle(), "main") != 0)
            throw ShopTrouble{TroubleId::cannot_write, path};
        return db;
    });
}

std::uint32_t schema_version(SQLite::Database& db) {
    return db.execAndGet("PRAGMA user_version").getUInt();
}

void copy_pages(SQLite::Database& from, const std::filesystem::path& to) {
    guarded(to, [&] {
        SQLite::Database copy{to.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        SQLite::Backup backup{copy, from};
        backup.executeStep(-1);
    });
}

SQLite::Database connect_new(const std::filesystem::path& path) {
    return guarded(path, [&] {
        const int flags = SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE | SQLite::OPEN_NOMUTEX;
        SQLite::Database db{path.string(), flags, kBusyMilliseconds};
        set_up(db);
        db.exec(std::string{schema_sql()});
        return db;
    });
}

void check_schema(SQLite::Database& db, const std::filesystem::path& path) {
    const auto pages = db.execAndGet("PRAGMA page_count").getInt64() * db.execAndGet("PRAGMA page_size").getInt64();
    if (std::filesystem::file_size(path) < static_cast<std::uintmax_t>(pages))
        throw ShopTrouble{TroubleId::shop_damaged, path};  // cut short
    static const auto ours = [] {
        SQLite::Database fresh{":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        fresh.exec(std::string{schema_sql()});
        return things_in(fresh);
    }();
    const auto theirs = things_in(db);
    for (const auto& [name, sql] : theirs) {
        const auto at = ours.find(name);
        if (at == ours.end() || !same_sql(at->second, sql))
            throw ShopTrouble{TroubleId::shop_foreign_table, path, {{"table", name}}};
    }
    if (theirs.size() != ours.size()) throw ShopTrouble{TroubleId::shop_damaged, path};
}

}  // namespace dyestead::db
