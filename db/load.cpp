// The one place that uses SQLite's own interface to read rows: fetching a cell through the wrapper
// takes two to five times as long.
#include "db/load.h"

#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <memory>

#include "db/row.h"
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

// The rows of one kind, one after another.
class Rows {
public:
    Rows(sqlite3* db, const RowKind& kind) : db_{db} {
        const std::string sql = select_sql(kind);
        sqlite3_stmt* raw = nullptr;
        const int result = sqlite3_prepare_v2(db, sql.c_str(), static_cast<int>(sql.size()), &raw, nullptr);
        statement_.reset(raw);
        if (result != SQLITE_OK) throw SQLite::Exception(db, result);
    }
    bool next() {
        const int result = sqlite3_step(statement_.get());
        if (result != SQLITE_ROW && result != SQLITE_DONE) throw SQLite::Exception(db_, result);
        return result == SQLITE_ROW;
    }
    Row row() const { return Row{statement_.get()}; }

private:
    sqlite3* db_;
    std::unique_ptr<sqlite3_stmt, Finalize> statement_;
};

template <class Fact>
void load_list(sqlite3* db, std::vector<Fact>& list) {
    Rows rows{db, row_kind<Fact>()};
    Key<Fact> last{INT64_MIN};
    while (rows.next()) {
        list.emplace_back();
        Row row = rows.row();
        fetch_fact(list.back(), row);
        if (list.back().key <= last) throw BadCell{};
        last = list.back().key;
    }
}

[[noreturn]] void damaged(const std::filesystem::path& path, const RowKind& kind) {
    throw ShopTrouble{TroubleId::shop_damaged, path, {{"table", std::string{kind.table}}}};
}

Seals stored_seals(SQLite::Database& db, const std::filesystem::path& path) {
    Seals seals;
    for (std::size_t kind = 0; kind < row_kinds().size(); ++kind) {
        SQLite::Statement query{db, "SELECT row_count, sum FROM seal WHERE table_name = ?"};
        query.bind(1, std::string{row_kinds()[kind].table});
        if (!query.executeStep()) damaged(path, row_kinds()[kind]);
        seals.at(kind) = {query.getColumn(0).getInt64(), static_cast<std::uint64_t>(query.getColumn(1).getInt64())};
    }
    return seals;
}

template <class Fact>
void load_kind(SQLite::Database& db, const std::filesystem::path& path, std::vector<Fact>& list) {
    try {
        load_list(db.getHandle(), list);
    } catch (const BadCell&) {
        damaged(path, row_kind<Fact>());
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
        if (loaded.seals.of<Fact>() != stored.of<Fact>()) damaged(path, row_kind<Fact>());
    });
    SQLite::Statement id{db, "SELECT id FROM file"};
    if (!id.executeStep()) throw ShopTrouble{TroubleId::shop_damaged, path, {{"table", "file"}}};
    loaded.file_id = id.getColumn(0).getString();
    loaded.last_change = last_change(db);
    loaded.data_version = data_version(db);
    return loaded;
}

}  // namespace dyestead::db
