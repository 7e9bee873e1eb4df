#include "db/save.h"

#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <chrono>
#include <memory>

#include "db/connection.h"
#include "db/row.h"
#include "domain/text/csv.h"

namespace dyestead::db {
namespace {

// Gives the values of a row to a statement, one after another.
class Binder final : public Sink {
public:
    explicit Binder(SQLite::Statement& statement) : statement_{statement} {}
    void whole(std::int64_t number) override { statement_.bind(at_++, number); }
    void text(std::string_view words) override { statement_.bind(at_++, std::string{words}); }
    void nothing() override { statement_.bind(at_++); }

private:
    SQLite::Statement& statement_;
    int at_ = 1;
};

// Records what is done to the tables of facts while it lives.
class Session {
public:
    explicit Session(SQLite::Database& db) : db_{db} {
        db.check(sqlite3session_create(db.getHandle(), "main", &session_));
        for (const RowKind& kind : row_kinds())
            db.check(sqlite3session_attach(session_, std::string{kind.table}.c_str()));
    }
    ~Session() { sqlite3session_delete(session_); }
    Session(const Session&) = delete;
    Session& operator=(const Session&) = delete;

    std::string changeset() {
        int size = 0;
        void* bytes = nullptr;
        db_.check(sqlite3session_changeset(session_, &size, &bytes));
        const std::unique_ptr<void, void (*)(void*)> owner{bytes, sqlite3_free};
        return bytes ? std::string{static_cast<const char*>(bytes), static_cast<std::size_t>(size)} : std::string{};
    }

private:
    SQLite::Database& db_;
    sqlite3_session* session_ = nullptr;
};

void remove_rows(SQLite::Database& db, const RowKind& kind, const std::vector<std::int64_t>& keys) {
    if (keys.empty()) return;
    SQLite::Statement remove{db, remove_sql(kind)};
    for (const std::int64_t key : keys) {
        remove.bind(1, key);
        remove.exec();
        remove.reset();
    }
}

void put_rows(SQLite::Database& db, const RowKind& kind, const std::vector<const void*>& facts) {
    if (facts.empty()) return;
    SQLite::Statement statement{db, put_sql(kind)};
    for (const void* fact : facts) {
        Binder binder{statement};
        kind.store(fact, binder);
        statement.exec();
        statement.reset();
    }
}

template <class Fact>
void write_kind(SQLite::Database& db, const std::vector<Fact>& put, const std::vector<Key<Fact>>& removed) {
    std::vector<std::int64_t> keys;
    for (const Key<Fact> key : removed) keys.push_back(key.number);
    remove_rows(db, row_kind<Fact>(), keys);
    std::vector<const void*> facts;
    for (const Fact& fact : put) facts.push_back(&fact);
    put_rows(db, row_kind<Fact>(), facts);
}

std::vector<std::int64_t> each_once(std::vector<std::int64_t> keys) {
    std::ranges::sort(keys);
    keys.erase(std::unique(keys.begin(), keys.end()), keys.end());
    return keys;
}

std::string as_rows(const std::vector<TroubleArg>& args) {
    std::string rows;
    for (const auto& [name, value] : args) add_csv_row(rows, {name, value});
    return rows;
}

}  // namespace

Seals seals_after(const Seals& seals, const Shop& shop, const Change& change) {
    Seals after = seals;
    shop.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        const auto& put = change.put.all<Fact>();
        const auto take_away = [&](Key<Fact> key) {
            if (const Fact* before = shop.find(key)) after.take_away(*before);
        };
        std::vector<std::int64_t> gone;
        for (const Key<Fact> key : change.removed_of<Fact>()) gone.push_back(key.number);
        for (const Fact& fact : put) gone.push_back(fact.key.number);
        for (const std::int64_t key : each_once(std::move(gone))) take_away(Key<Fact>{key});
        for (const Fact& fact : put) after.add(fact);
    });
    return after;
}

void write_change(SQLite::Database& db, const Title& title, const Change& change, const Seals& before,
                  const Seals& after) {
    std::string changeset;
    {
        Session session{db};
        change.put.for_each_list([&](const auto& put) {
            using Fact = typename std::remove_cvref_t<decltype(put)>::value_type;
            write_kind(db, put, change.removed_of<Fact>());
        });
        changeset = session.changeset();
    }
    write_seals(db, before, after);
    write_entry(db, title, changeset, std::nullopt, before, after);
}

void write_entry(SQLite::Database& db, const Title& title, const std::string& changeset,
                 std::optional<std::int64_t> reverts, const Seals& before, const Seals& after) {
    SQLite::Statement log{db,
                          "INSERT INTO change (at, title_code, title_args, changeset, reverts, schema, seal_before, "
                          "seal_after) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"};
    const auto now = std::chrono::system_clock::now().time_since_epoch();
    log.bind(1, static_cast<std::int64_t>(std::chrono::duration_cast<std::chrono::seconds>(now).count()));
    log.bind(2, title.code);
    log.bind(3, as_rows(title.args));
    log.bind(4, changeset.data(), static_cast<int>(changeset.size()));
    if (reverts)
        log.bind(5, *reverts);
    else
        log.bind(5);
    log.bind(6, static_cast<std::int64_t>(kSchemaVersion));
    log.bind(7, before.total());
    log.bind(8, after.total());
    log.exec();
}

void write_seals(SQLite::Database& db, const Seals& before, const Seals& after) {
    SQLite::Statement update{db, "UPDATE seal SET row_count = ?, sum = ? WHERE table_name = ?"};
    for (std::size_t kind = 0; kind < row_kinds().size(); ++kind) {
        const Seal& seal = after.at(kind);
        if (seal == before.at(kind)) continue;
        Binder binder{update};
        binder.whole(seal.rows);
        binder.whole(static_cast<std::int64_t>(seal.sum));
        binder.text(row_kinds()[kind].table);
        update.exec();
        update.reset();
    }
}

void write_first_seals(SQLite::Database& db) {
    SQLite::Statement insert{db, "INSERT INTO seal (table_name, row_count, sum) VALUES (?, 0, 0)"};
    for (const RowKind& kind : row_kinds()) {
        insert.bind(1, std::string{kind.table});
        insert.exec();
        insert.reset();
    }
}

}  // namespace dyestead::db
