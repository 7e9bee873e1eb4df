#include "db/draft.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>

namespace dyestead::db {

std::vector<Draft> read_drafts(SQLite::Database& db) {
    std::vector<Draft> drafts;
    SQLite::Statement query{db, "SELECT form, field, typed FROM draft ORDER BY form, key"};
    while (query.executeStep()) {
        const std::string form = query.getColumn(0).getString();
        if (drafts.empty() || drafts.back().form != form) drafts.push_back({form, {}});
        drafts.back().fields.emplace_back(query.getColumn(1).getString(), query.getColumn(2).getString());
    }
    return drafts;
}

void write_draft(SQLite::Database& db, const Draft& draft) {
    SQLite::Transaction all{db, SQLite::TransactionBehavior::IMMEDIATE};
    SQLite::Statement remove{db, "DELETE FROM draft WHERE form = ?"};
    remove.bind(1, draft.form);
    remove.exec();
    SQLite::Statement insert{db, "INSERT INTO draft (form, field, typed) VALUES (?, ?, ?)"};
    for (const auto& [field, typed] : draft.fields) {
        insert.bind(1, draft.form);
        insert.bind(2, field);
        insert.bind(3, typed);
        insert.exec();
        insert.reset();
    }
    all.commit();
}

}  // namespace dyestead::db
