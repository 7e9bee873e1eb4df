// csv_records.h - the records of a folder while they are read: for each kind its sheet, the facts read
// from it and which row each came from. Filled by csv_read.cpp, looked over by csv_checks.cpp.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "db/csv_names.h"
#include "db/csv_sheet.h"
#include "domain/facts/shop.h"

namespace dyestead::db {

// What does not depend on the kind of fact.
struct Records {
    std::string_view table;
    Sheet sheet;
    std::vector<char> whole;                             // for each row, whether all of it could be read
    std::unordered_map<std::string, std::int64_t> keys;  // of heads, by code
};

template <class Fact>
struct RecordsOf : Records {
    std::vector<Fact> facts;  // one for each row of the sheet, in its order

    RecordsOf() = default;
    RecordsOf(const RecordsOf&) = delete;
    RecordsOf& operator=(const RecordsOf&) = delete;
    [[gnu::noinline]] ~RecordsOf() {}  // not once for every kind in one function
};

struct FolderRecords {
    ForEveryKind<RecordsOf> kinds;
    std::vector<Trouble> troubles;

    template <class Fact>
    RecordsOf<Fact>& of() {
        return kinds.template of<Fact>();
    }
    template <class Fact>
    const RecordsOf<Fact>& of() const {
        return kinds.template of<Fact>();
    }
    // visit(RecordsOf<Fact>&) for every kind.
    template <class Visit>
    void for_each_kind(Visit&& visit) {
        kinds.for_each(visit);
    }

    // What read_field asks.
    template <class Fact>
    std::optional<Key<Fact>> key_of(std::string_view code) const {
        const auto& keys = of<Fact>().keys;
        const auto at = keys.find(std::string{code});
        return at == keys.end() ? std::nullopt : std::optional{Key<Fact>{at->second}};
    }

    // The record of this table and code; kBareKey and a key where there is none of that name.
    std::optional<AnyKey> any_key_of(std::string_view name) const;

    // About one cell of a row, which is given as its particular `value`.
    void trouble(TroubleId id, const Records& kind, std::size_t row, std::size_t column,
                 std::vector<TroubleArg> args = {});
};

// What does not hold between records: names twice, lots without a maker, amounts of the wrong kind.
// Adds to the troubles.
void check_records(FolderRecords& records, const std::filesystem::path& folder);

}  // namespace dyestead::db
