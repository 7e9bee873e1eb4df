// csv_names.h - what are a kind's CSV file and its columns called, and which may be left out?
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/facts/field.h"

namespace dyestead::db {

std::string csv_file_name(std::string_view table);

// Stands before the key of a record that is gone, where its code would be: "vat/#77".
inline constexpr std::string_view kBareKey = "#";

// Not inlined into the lists of hundreds of columns that are made of it.
[[gnu::noinline]] inline void add_column(std::vector<std::string>& columns, std::string_view name) {
    columns.emplace_back(name);
}

// Without `key`, which stands last where it is needed.
template <class Fact>
std::vector<std::string> csv_columns() {
    std::vector<std::string> columns;
    if constexpr (Line<Fact>)
        columns = {std::string{Fact::Head::kTable}, "position"};
    else
        columns = {"code"};
    for_each_field<Fact>([&](const auto& each) { add_column(columns, each.name); });
    return columns;
}

// Of csv_columns: the names of those that a file may leave out, which is to leave them blank in every row.
template <class Fact>
std::vector<std::string> csv_columns_that_may_be_missing() {
    std::vector<std::string> columns{"key"};
    for_each_field<Fact>([&](const auto& each) {
        if constexpr (requires(Fact fact) { (fact.*each.member).has_value(); }) add_column(columns, each.name);
    });
    return columns;
}

}  // namespace dyestead::db
