#include "db/row.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace dyestead::db {
namespace {

constexpr std::array<std::string_view, 1> kAlone{""};

void add_columns(std::vector<std::string>& columns, std::string_view name, std::span<const std::string_view> suffixes) {
    for (const auto suffix : suffixes) columns.push_back(fmt::format("{}{}", name, suffix));
}

template <class Fact>
std::vector<std::string> columns_of() {
    std::vector<std::string> columns;
    add_columns(columns, "key", kAlone);
    if constexpr (Line<Fact>) {
        add_columns(columns, "head", kAlone);
        add_columns(columns, "position", kAlone);
    } else {
        add_columns(columns, "code", kAlone);
    }
    for_each_field<Fact>([&](const auto& each) {
        using Member = std::remove_reference_t<decltype(std::declval<Fact&>().*each.member)>;
        add_columns(columns, each.name, kSuffixes<Member>);
    });
    return columns;
}

template <class Fact>
void store_row(const void* row, Sink& sink) {
    for_each_value(*static_cast<const Fact*>(row), [&](const auto& value) { store(value, sink); });
}

}  // namespace

std::span<const RowKind> row_kinds() {
    static const std::vector<RowKind> kinds = [] {
        std::vector<RowKind> all;
        Shop{}.for_each_list([&]<class Fact>(const std::vector<Fact>&) {
            all.push_back({Fact::kTable, columns_of<Fact>(), &store_row<Fact>});
        });
        return all;
    }();
    return kinds;
}

std::string select_sql(const RowKind& kind) {
    return fmt::format("SELECT \"{}\" FROM \"{}\" ORDER BY key", fmt::join(kind.columns, "\", \""), kind.table);
}

std::string put_sql(const RowKind& kind) {
    const auto& columns = kind.columns;
    std::string marks = "?";
    std::string sets;
    for (std::size_t i = 1; i < columns.size(); ++i) {
        marks += ", ?";
        sets += fmt::format("{}\"{}\" = excluded.\"{}\"", i == 1 ? "" : ", ", columns[i], columns[i]);
    }
    return fmt::format("INSERT INTO \"{}\" (\"{}\") VALUES ({}) ON CONFLICT (key) DO UPDATE SET {}", kind.table,
                       fmt::join(columns, "\", \""), marks, sets);
}

std::string remove_sql(const RowKind& kind) {
    return fmt::format("DELETE FROM \"{}\" WHERE key = ?", kind.table);
}

}  // namespace dyestead::db
