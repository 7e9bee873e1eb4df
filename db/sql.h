// sql.h - the statements of one kind of fact, from its field list.
// Names are always quoted: some fields are words of SQL (from, of, where).
#pragma once

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <string>
#include <vector>

#include "db/column.h"

namespace dyestead::db {

// As in the table, in its order.
template <class Fact>
std::vector<std::string> column_names() {
    std::vector<std::string> names{"key"};
    if constexpr (Line<Fact>)
        names.insert(names.end(), {"head", "position"});
    else
        names.emplace_back("code");
    for_each_field<Fact>([&](const auto& each) {
        using Member = std::remove_reference_t<decltype(std::declval<Fact&>().*each.member)>;
        for (const auto suffix : kSuffixes<Member>) names.push_back(fmt::format("{}{}", each.name, suffix));
    });
    return names;
}

template <class Fact>
std::string select_sql() {
    return fmt::format(
        "SELECT \"{}\" FROM \"{}\" ORDER BY key", fmt::join(column_names<Fact>(), "\", \""), Fact::kTable);
}

// Adds the fact, or puts it in the place of the one with the same key.
template <class Fact>
std::string put_sql() {
    const auto names = column_names<Fact>();
    std::string marks = "?";
    std::string sets;
    for (std::size_t i = 1; i < names.size(); ++i) {
        marks += ", ?";
        sets += fmt::format("{}\"{}\" = excluded.\"{}\"", i == 1 ? "" : ", ", names[i], names[i]);
    }
    return fmt::format("INSERT INTO \"{}\" (\"{}\") VALUES ({}) ON CONFLICT (key) DO UPDATE SET {}", Fact::kTable,
                       fmt::join(names, "\", \""), marks, sets);
}

template <class Fact>
std::string remove_sql() {
    return fmt::format("DELETE FROM \"{}\" WHERE key = ?", Fact::kTable);
}

}  // namespace dyestead::db
