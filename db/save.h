// save.h - writes one change into an open file: the rows, the seals, and one entry in the log.
#pragma once

#include <SQLiteCpp/Database.h>

#include <optional>
#include <string>

#include "db/open_shop.h"
#include "db/seal.h"

namespace dyestead::db {

// Seals of `shop` once `change` is in it.
Seals seals_after(const Seals& seals, const Shop& shop, const Change& change);

// Requires: a transaction for writing, and that the file holds what `before` seals.
// The log's entry holds SQLite's changeset, whose inverse takes the change back.
void write_change(SQLite::Database& db, const Title& title, const Change& change, const Seals& before,
                  const Seals& after);

// The seals that differ, and one more entry in the log. `reverts`: the entry that this one takes back.
void write_seals(SQLite::Database& db, const Seals& before, const Seals& after);
void write_entry(SQLite::Database& db, const Title& title, const std::string& changeset,
                 std::optional<std::int64_t> reverts, const Seals& before, const Seals& after);

// One row for each kind of fact, none counted yet.
void write_first_seals(SQLite::Database& db);

}  // namespace dyestead::db
