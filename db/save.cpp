#include "db/save.h"

#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <chrono>
#include <memory>

#include "db/connection.h"
#include "db/sql.h"
#include "domain/text/csv.h"

namespace dyestead::db {
namespace {

// Gives the values of a row to a statement, one after another.
class Binder {
public:
    explicit Binder(SQLite::Statement& statement) : statement_{statement} {}
    void whole(std::int64_t number) { statement_.bind(at_++, number); }
    void text(std::string_view words) { statement_.bind(at_++, std::string{words}); }
    void nothing() { statement_.bind(at_++); }

private:
    SQLite::Statement& statement_;
    int at_ = 1;
};

// Records what is done to the tables of facts while it lives.
class Session {
public:
    explicit Session(SQLite::Database& db) : db_{db} {
        db.check(sqlite3session_create(db.getHandle(), "main", &session_));
        Shop{}.for_each_list([&](const auto& list) {
            using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
            db.check(sqlite3session_attach(session_, std::string{Fact::kTable}.c_str()));
        });
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

template <class Fact>
void write_kind(SQLite::Database& db, const std::vector<Fact>& put, const std::vector<Key<Fact>>& removed) {
    if (!removed.empty()) {
        SQLite::Statement remove{db, remove_sql<Fact>()};
        for (const Key<Fact> key : removed) {
            remove.bind(1, key.number);
            remove.exec();
            remove.reset();
        }
    }
    if (put.empty()) return;
    SQLite::Statement statement{db, put_sql<Fact>()};
    for (const Fact& fact : put) {
        Binder binder{statement};
        store_fact(fact, binder);
        statement.exec();
        statement.reset();
    }
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
        std::vector<Key<Fact>> gone = change.removed_of<Fact>();
        for (const Fact& fact : put) gone.push_back(fact.key);
        std::ranges::sort(gone);
        gone.erase(std::unique(gone.begin(), gone.end()), gone.end());
        std::ranges::for_each(gone, take_away);
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
    Shop{}.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        const Seal& seal = after.of<Fact>();
        if (seal == before.of<Fact>()) return;
        Binder binder{update};
        binder.whole(seal.rows);
        binder.whole(static_cast<std::int64_t>(seal.sum));
        binder.text(Fact::kTable);
        update.exec();
        update.reset();
    });
}

void write_first_seals(SQLite::Database& db) {
    SQLite::Statement insert{db, "INSERT INTO seal (table_name, row_count, sum) VALUES (?, 0, 0)"};
    Shop{}.for_each_list([&](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        insert.bind(1, std::string{Fact::kTable});
        insert.exec();
        insert.reset();
    });
}

}  // namespace dyestead::db
