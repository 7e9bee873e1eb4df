#include "db/history.h"

#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <memory>
#include <stdexcept>

#include "db/connection.h"
#include "domain/text/csv.h"

namespace dyestead::db {
namespace {

std::vector<TroubleArg> args_from(const std::string& rows) {
    std::vector<TroubleArg> args;
    const CsvText read = read_csv(rows);
    for (const CsvRow& row : read.rows)
        if (row.size() == 2) args.emplace_back(row[0].text, row[1].text);
    return args;
}

}  // namespace

History read_history(SQLite::Database& db) {
    History history;
    SQLite::Statement query{db, "SELECT id, reverts, schema FROM change ORDER BY id"};
    bool first = true;
    while (query.executeStep()) {
        const std::int64_t id = query.getColumn(0).getInt64();
        if (query.getColumn(2).getInt64() != kSchemaVersion) {
            history = {.undo = {}, .redo = {}, .closed = true};
            first = false;
            continue;
        }
        if (query.getColumn(1).isNull()) {
            history.redo.clear();
            // The entry the file began with is not taken back: there would be no shop.
            if (!first) history.undo.push_back(id);
        } else {
            const std::int64_t reverted = query.getColumn(1).getInt64();
            if (!history.undo.empty() && history.undo.back() == reverted) {
                history.undo.pop_back();
                history.redo.push_back(id);
            } else if (!history.redo.empty() && history.redo.back() == reverted) {
                history.redo.pop_back();
                history.undo.push_back(id);
            } else {
                history = {.undo = {}, .redo = {}, .closed = history.closed};  // not as this program writes it
            }
        }
        first = false;
    }
    return history;
}

LogEntry read_entry(SQLite::Database& db, std::int64_t id) {
    SQLite::Statement query{
        db, "SELECT title_code, title_args, changeset, seal_before, seal_after FROM change WHERE id = ?"};
    query.bind(1, id);
    if (!query.executeStep()) throw std::logic_error("no such entry in the log");
    const auto blob = query.getColumn(2);
    return {
        .title = {query.getColumn(0).getString(), args_from(query.getColumn(1).getString())},
        .changeset = std::string{static_cast<const char*>(blob.getBlob()), static_cast<std::size_t>(blob.getBytes())},
        .seal_before = query.getColumn(3).getInt64(),
        .seal_after = query.getColumn(4).getInt64()};
}

std::optional<std::string> take_back(SQLite::Database& db, const LogEntry& entry) {
    int size = 0;
    void* raw = nullptr;
    std::string forward = entry.changeset;
    db.check(sqlite3changeset_invert(static_cast<int>(forward.size()), forward.data(), &size, &raw));
    const std::unique_ptr<void, void (*)(void*)> inverse{raw, sqlite3_free};
    const auto abort_at_any = [](void*, int, sqlite3_changeset_iter*) -> int { return SQLITE_CHANGESET_ABORT; };
    const int result = sqlite3changeset_apply(db.getHandle(), size, inverse.get(), nullptr, abort_at_any, nullptr);
    if (result == SQLITE_ABORT) return std::nullopt;
    db.check(result);
    return std::string{static_cast<const char*>(inverse.get()), static_cast<std::size_t>(size)};
}

}  // namespace dyestead::db
