// draft.h - forms half filled in, kept so that a crash loses no more than a second's typing. Neither logged nor sealed.
#pragma once

#include <SQLiteCpp/Database.h>

#include <string>
#include <utility>
#include <vector>

namespace dyestead::db {

struct Draft {
    std::string form;                                         // which form: "delivery"
    std::vector<std::pair<std::string, std::string>> fields;  // what stands in each
};

std::vector<Draft> read_drafts(SQLite::Database& db);
// In the place of what was kept of that form; without fields nothing is kept.
void write_draft(SQLite::Database& db, const Draft& draft);

}  // namespace dyestead::db
