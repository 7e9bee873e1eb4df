// history.h - which change would Undo take back next, and which would Redo bring again?
// Read off the log, which only grows: an undo is an entry that reverts another, a redo one that reverts an undo. A new
// change leaves nothing to redo. Never below the first entry, nor past one made before the tables were changed.
#pragma once

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "db/open_shop.h"

namespace dyestead::db {

// Ids of the log, the next one last.
struct History {
    std::vector<std::int64_t> undo;
    std::vector<std::int64_t> redo;
    bool closed = false;  // there are entries from before the tables were changed
};

History read_history(SQLite::Database& db);

// An entry of the log as it was written.
struct LogEntry {
    Title title;
    std::string changeset;
    std::int64_t seal_before = 0;
    std::int64_t seal_after = 0;
};

// Throws: std::logic_error where there is no such entry.
LogEntry read_entry(SQLite::Database& db, std::int64_t id);

// Puts the tables of facts back to what they were before the entry, and gives the changeset that did it.
// Requires: a transaction for writing. Nothing where the tables do not hold what the entry left; roll back then.
std::optional<std::string> take_back(SQLite::Database& db, const LogEntry& entry);

}  // namespace dyestead::db
