#include "db/bring_up.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <sqlite3.h>

#include <algorithm>
#include <map>
#include <system_error>

#include "db/backup.h"
#include "db/connection.h"
#include "db/load.h"
#include "db/save.h"
#include "db/schema_sql.h"
#include "db/trouble.h"
#include "db/unfinished.h"

namespace dyestead::db {
namespace {

struct Column {
    std::string name;
    std::string type;
    bool is_key = false;
    friend bool operator==(const Column&, const Column&) = default;
};
using Tables = std::map<std::string, std::vector<Column>>;

[[noreturn]] void damaged(const std::filesystem::path& path, const std::string& table) {
    throw ShopTrouble{TroubleId::shop_damaged, path, {{"table", table}}};
}

std::vector<Column> columns_of(SQLite::Database& db, const std::string& table) {
    std::vector<Column> columns;
    SQLite::Statement query{db, "SELECT name, type, pk FROM pragma_table_xinfo(?)"};
    query.bind(1, table);
    while (query.executeStep())
        columns.push_back({query.getColumn(0), query.getColumn(1), query.getColumn(2).getInt() != 0});
    return columns;
}

Tables tables_in(SQLite::Database& db) {
    Tables tables;
    SQLite::Statement query{db, "SELECT name FROM sqlite_schema WHERE type = 'table'"};
    while (query.executeStep()) {
        const std::string name = query.getColumn(0);
        tables[name] = columns_of(db, name);
    }
    return tables;
}

Tables our_tables() {
    SQLite::Database fresh{":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
    fresh.exec(std::string{schema_sql()});
    return tables_in(fresh);
}

// Of every table and column there is one today; but for indexes, which hold nothing of their own, there is nothing
// else. Throws: ShopTrouble shop_foreign_table.
Tables earlier_tables(SQLite::Database& db, const std::filesystem::path& path) {
    const auto foreign = [&](const std::string& name) {
        throw ShopTrouble{TroubleId::shop_foreign_table, path, {{"table", name}}};
    };
    SQLite::Statement others{db, "SELECT name FROM sqlite_schema WHERE type NOT IN ('table', 'index')"};
    if (others.executeStep()) foreign(others.getColumn(0));
    const Tables ours = our_tables();
    Tables theirs = tables_in(db);
    for (const auto& [table, columns] : theirs) {
        const auto today = ours.find(table);
        if (today == ours.end()) foreign(table);
        for (const Column& column : columns)
            if (std::ranges::find(today->second, column) == today->second.end()) foreign(table);
    }
    for (const char* needed : {"file", "seal", "change", "draft"})
        if (!theirs.contains(needed)) damaged(path, needed);
    return theirs;
}

// Of the rows as they stand, in the order of their columns: those are the fields that the version which wrote them had.
Seal seal_of_rows(SQLite::Database& db, const std::string& table) {
    Seal seal;
    SQLite::Statement rows{db, fmt::format("SELECT * FROM \"{}\"", table)};
    while (rows.executeStep()) {
        SealBytes bytes;
        for (int i = 0; i < rows.getColumnCount(); ++i) {
            const SQLite::Column cell = rows.getColumn(i);
            if (cell.isNull())
                bytes.nothing();
            else if (cell.isInteger())
                bytes.whole(cell.getInt64());
            else
                bytes.text(cell.getString());
        }
        ++seal.rows;
        seal.sum += hash_of(bytes.bytes());
    }
    return seal;
}

void verify(SQLite::Database& db, const Tables& tables, const std::filesystem::path& path) {
    if (db.execAndGet("PRAGMA integrity_check").getString() != "ok") damaged(path, "file");
    SQLite::Statement lost{db, "PRAGMA foreign_key_check"};
    if (lost.executeStep()) damaged(path, lost.getColumn(0));
    Shop{}.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        const std::string table{Fact::kTable};
        if (!tables.contains(table)) return;
        SQLite::Statement stored{db, "SELECT row_count, sum FROM seal WHERE table_name = ?"};
        stored.bind(1, table);
        if (!stored.executeStep()) damaged(path, table);
        const Seal seal = seal_of_rows(db, table);
        if (stored.getColumn(0).getInt64() != seal.rows ||
            static_cast<std::uint64_t>(stored.getColumn(1).getInt64()) != seal.sum)
            damaged(path, table);
    });
}

// The file as it was, for as long as the bringing up has not succeeded; then it stays.
class BackupBefore {
public:
    BackupBefore(SQLite::Database& from, const Tables& tables, const std::filesystem::path& path) {
        const std::string id = from.execAndGet("SELECT id FROM file").getString();
        if (!is_file_id(id)) damaged(path, "file");
        try {
            path_ = place_for_backup(id);
            Unfinished copy{path_};
            copy_pages(from, copy.path());
            guarded(path, [&] {
                SQLite::Database copied{copy.path().string(), SQLite::OPEN_READONLY};
                verify(copied, tables, path);
            });
            copy.finish();
        } catch (const ShopTrouble& trouble) {
            if (trouble.trouble.id == TroubleId::shop_damaged) throw;
            throw ShopTrouble{TroubleId::shop_older_unsaved, path, {{"folder", backup_folder(id).string()}}};
        }
    }
    ~BackupBefore() {
        std::error_code ignored;
        if (!stays_) std::filesystem::remove(path_, ignored);
    }
    BackupBefore(const BackupBefore&) = delete;
    BackupBefore& operator=(const BackupBefore&) = delete;

    std::filesystem::path stays() {
        stays_ = true;
        return path_;
    }

private:
    std::filesystem::path path_;
    bool stays_ = false;
};

std::string names_of(const std::vector<Column>& columns) {
    std::vector<std::string> names;
    for (const Column& column : columns) names.push_back(fmt::format("\"{}\"", column.name));
    return fmt::format("{}", fmt::join(names, ", "));
}

void put_aside(SQLite::Database& db, const Tables& tables) {
    for (const auto& [table, columns] : tables) {
        db.exec(
            fmt::format("CREATE TEMP TABLE \"earlier {0}\" AS SELECT {1} FROM main.\"{0}\"", table, names_of(columns)));
        db.exec(fmt::format("DROP TABLE main.\"{}\"", table));
    }
}

void put_back(SQLite::Database& db, const Tables& tables, const std::filesystem::path& path) {
    for (const auto& [table, columns] : tables) {
        if (table == "seal") continue;  // made afresh
        try {
            db.exec(fmt::format(
                "INSERT INTO main.\"{0}\" ({1}) SELECT {1} FROM temp.\"earlier {0}\"", table, names_of(columns)));
        } catch (const SQLite::Exception& error) {
            if ((error.getErrorCode() & 0xFF) != SQLITE_CONSTRAINT) throw;
            throw ShopTrouble{TroubleId::shop_older_refused, path, {{"table", table}}};
        }
    }
    write_first_seals(db);
    write_seals(db, Seals{}, seals_of(load_facts(db, path)));
}

SQLite::Database connect_to_bring_up(const std::filesystem::path& path) {
    try {
        SQLite::Database db = connect(path, Access::read_write);
        db.exec("PRAGMA foreign_keys = OFF");  // they were looked at in the backup, and none is added
        db.exec("PRAGMA temp_store = MEMORY");
        return db;
    } catch (const ShopTrouble& trouble) {
        if (trouble.trouble.id != TroubleId::cannot_write) throw;
        throw ShopTrouble{TroubleId::shop_older_unwritable, path};
    }
}

}  // namespace

std::optional<BroughtUp> bring_up(SQLite::Database& reader, const std::filesystem::path& path) {
    // By SQLite, not from the file's first bytes: a bringing up that was cut off is first taken back.
    const std::uint32_t version = schema_version(reader);
    if (version == kSchemaVersion) return std::nullopt;
    if (version > kSchemaVersion) throw ShopTrouble{TroubleId::shop_newer, path};
    if (version < kOldestSchemaVersion) throw ShopTrouble{TroubleId::shop_too_old, path};
    return guarded(path, [&]() -> std::optional<BroughtUp> {
        SQLite::Database db = connect_to_bring_up(path);
        SQLite::Transaction all{db, SQLite::TransactionBehavior::IMMEDIATE};
        if (schema_version(db) == kSchemaVersion) return std::nullopt;  // another program has just done it
        const Tables tables = earlier_tables(db, path);
        BackupBefore backup{reader, tables, path};
        try {
            put_aside(db, tables);
            db.exec(std::string{schema_sql()});
            put_back(db, tables, path);
            all.commit();
        } catch (const SQLite::Exception& error) {
            // The journal has to stand in the same folder.
            if ((error.getErrorCode() & 0xFF) != SQLITE_READONLY) throw;
            throw ShopTrouble{TroubleId::shop_older_unwritable, path};
        }
        return BroughtUp{version, backup.stays()};
    });
}

}  // namespace dyestead::db
