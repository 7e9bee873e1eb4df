// The one place that uses SQLite's own interface to read rows: fetching a cell through the wrapper
// takes two to five times as long.
#include "db/load.h"

#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <memory>

#include "db/sql.h"
#include "db/trouble.h"

namespace dyestead::db {
namespace {

// The cells of one row, taken one after another.
class Row {
public:
    explicit Row(sqlite3_stmt* statement) : statement_{statement} {}
    bool is_nothing() const { return sqlite3_column_type(statement_, at_) == SQLITE_NULL; }
    void skip(std::size_t columns) { at_ += static_cast<int>(columns); }
    std::int64_t whole() {
        expect(SQLITE_INTEGER);
        return sqlite3_column_int64(statement_, at_++);
    }
    std::string_view text() {
        expect(SQLITE_TEXT);
        const auto* start = reinterpret_cast<const char*>(sqlite3_column_text(statement_, at_));
        const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement_, at_++));
        return {start, size};
    }

private:
    void expect(int type) const {
        if (sqlite3_column_type(statement_, at_) != type) throw BadCell{};
    }
    sqlite3_stmt* statement_;
    int at_ = 0;
};

struct Finalize {
    void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
};

template <class Fact>
void load_list(sqlite3* db, std::vector<Fact>& list) {
    const std::string sql = select_sql<Fact>();
    sqlite3_stmt* raw = nullptr;
    int result = sqlite3_prepare_v2(db, sql.c_str(), static_cast<int>(sql.size()), &raw, nullptr);
    const std::unique_ptr<sqlite3_stmt, Finalize> statement{raw};
    if (result != SQLITE_OK) throw SQLite::Exception(db, result);
    while ((result = sqlite3_step(raw)) == SQLITE_ROW) {
        Row row{raw};
        Fact fact = fetch_fact<Fact>(row);
        if (!list.empty() && fact.key <= list.back().key) throw BadCell{};
        list.push_back(std::move(fact));
    }
    if (result != SQLITE_DONE) throw SQLite::Exception(db, result);
}

Seals stored_seals(SQLite::Database& db, const std::filesystem::path& path) {
    Seals seals;
    Shop{}.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        SQLite::Statement query{db, "SELECT row_count, sum FROM seal WHERE table_name = ?"};
        query.bind(1, std::string{Fact::kTable});
        if (!query.executeStep())
            throw ShopTrouble{TroubleId::shop_damaged, path, {{"table", std::string{Fact::kTable}}}};
        seals.of<Fact>() = {query.getColumn(0).getInt64(), static_cast<std::uint64_t>(query.getColumn(1).getInt64())};
    });
    return seals;
}

template <class Fact>
void load_kind(SQLite::Database& db, const std::filesystem::path& path, std::vector<Fact>& list) {
    try {
        load_list(db.getHandle(), list);
    } catch (const BadCell&) {
        throw ShopTrouble{TroubleId::shop_damaged, path, {{"table", std::string{Fact::kTable}}}};
    }
}

std::int64_t number_from(SQLite::Database& db, const char* sql) {
    SQLite::Statement query{db, sql};
    query.executeStep();
    return query.getColumn(0).getInt64();
}

}  // namespace

std::int64_t last_change(SQLite::Database& db) {
    return number_from(db, "SELECT ifnull(max(id), 0) FROM change");
}

std::int64_t data_version(SQLite::Database& db) {
    return number_from(db, "PRAGMA data_version");
}

Shop load_facts(SQLite::Database& db, const std::filesystem::path& path) {
    Shop shop;
    shop.for_each_list([&](auto& list) { load_kind(db, path, list); });
    return shop;
}

Loaded load(SQLite::Database& db, const std::filesystem::path& path) {
    Loaded loaded;
    const Seals stored = stored_seals(db, path);
    loaded.shop.for_each_list([&](auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        // The seal itself may be damaged: no more room than a large shop needs is taken on its word.
        list.reserve(static_cast<std::size_t>(std::clamp<std::int64_t>(stored.of<Fact>().rows, 0, 1'000'000)));
        load_kind(db, path, list);
        for (const Fact& fact : list) loaded.seals.add(fact);
        if (loaded.seals.of<Fact>() != stored.of<Fact>())
            throw ShopTrouble{TroubleId::shop_damaged, path, {{"table", std::string{Fact::kTable}}}};
    });
    SQLite::Statement id{db, "SELECT id FROM file"};
    if (!id.executeStep()) throw ShopTrouble{TroubleId::shop_damaged, path, {{"table", "file"}}};
    loaded.file_id = id.getColumn(0).getString();
    loaded.last_change = last_change(db);
    loaded.data_version = data_version(db);
    return loaded;
}

}  // namespace dyestead::db
