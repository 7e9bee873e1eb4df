// row.h - what is a row of each kind of fact called, which columns has it, and what stands in them?
// One table for all kinds, so that what goes over the columns of a fact is compiled in row.cpp alone.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "db/column.h"

namespace dyestead::db {

struct RowKind {
    std::string_view table;
    std::vector<std::string> columns;  // as in the table, in its order
    void (*store)(const void* fact, Sink& sink) = nullptr;
};

// In the order of ForEveryKind.
std::span<const RowKind> row_kinds();

template <class Fact>
const RowKind& row_kind() {
    return row_kinds()[ForEveryKind<FactList>::place<Fact>()];
}

// Every column of its row.
template <class Fact>
void store_fact(const Fact& fact, Sink& sink) {
    row_kind<Fact>().store(&fact, sink);
}

// The statements of one kind. Names are always quoted: some fields are words of SQL (from, of, where).
std::string select_sql(const RowKind& kind);
// Adds the fact, or puts it in the place of the one with the same key.
std::string put_sql(const RowKind& kind);
std::string remove_sql(const RowKind& kind);

}  // namespace dyestead::db
