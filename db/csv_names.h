// csv_names.h - what are a kind's CSV file and its columns called?
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/facts/field.h"

namespace dyestead::db {

std::string csv_file_name(std::string_view table);

// Without `key`, which stands last where it is needed.
template <class Fact>
std::vector<std::string> csv_columns() {
    std::vector<std::string> columns;
    if constexpr (Line<Fact>)
        columns = {std::string{Fact::Head::kTable}, "position"};
    else
        columns = {"code"};
    for_each_field<Fact>([&](const auto& each) { columns.emplace_back(each.name); });
    return columns;
}

}  // namespace dyestead::db
