// Holds db/schema.sql, which is written for people, against the field lists in domain/facts.
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <doctest/doctest.h>

#include <map>
#include <set>

#include "db/connection.h"
#include "db/csv_folder.h"
#include "db/hash.h"
#include "db/row.h"
#include "db/schema_sql.h"
#include "domain/facts/field_text.h"
#include "tests/support/small_shop.h"
#include "tests/support/temp_folder.h"

using namespace dyestead;
using namespace dyestead::db;
using namespace dyestead::test;

namespace {

struct ExpectedColumn {
    std::string name;
    std::string type;
    bool may_be_null;
    std::string refers_to{};
    // The least and the most that the gate lets in.
    std::optional<std::pair<std::int64_t, std::int64_t>> range{};
    std::vector<std::string> words{};
    bool part = false;  // the upper number of a share of a whole: no more than the lower one
};

template <class Words>
std::vector<std::string> as_strings(const Words& words) {
    return {words.begin(), words.end()};
}

std::int64_t days(std::string_view text) {
    return (*read_day(text)).time_since_epoch().count();
}

template <class T>
[[gnu::noinline]] std::vector<ExpectedColumn> columns_of(const std::string& name, bool null = false) {
    constexpr std::int64_t kMostInRatio = 100'000'000'000;  // where read_ratio stops
    const auto number = [&](const std::string& column, std::int64_t low, std::int64_t high) {
        return ExpectedColumn{column, "INTEGER", null, {}, std::pair{low, high}, {}};
    };
    const auto text = [&](const std::string& column, std::vector<std::string> words) {
        return ExpectedColumn{column, "TEXT", null, {}, {}, std::move(words)};
    };
    if constexpr (kIsOptional<T>)
        return columns_of<typename T::value_type>(name, true);
    else if constexpr (kIsKey<T>)
        return {
            {name, "INTEGER", null, std::string{decltype([]<class F>(Key<F>) { return F{}; }(T{}))::kTable}, {}, {}}};
    else if constexpr (std::is_same_v<T, std::string>)
        return {text(name, {})};
    else if constexpr (std::is_same_v<T, Day>)
        return {number(name, days("0000-01-01"), days("9999-12-31"))};
    else if constexpr (std::is_same_v<T, Money>)
        return {number(name, 0, kLargestStatedMoney.in_millionths())};
    else if constexpr (std::is_same_v<T, Amount>)
        return {number(name, 0, kLargestStatedBase), text(name + "_unit", {}),
                text(name + "_mark", as_strings(kMarkWords))};
    else if constexpr (std::is_same_v<T, Span>)
        return {number(name, 0, kLongestStatedTime.in_millionths()), text(name + "_unit", as_strings(kTimeUnitWords)),
                text(name + "_mark", as_strings(kMarkWords))};
    else if constexpr (std::is_same_v<T, Ratio>)
        return {number(name + "_top", 0, kMostInRatio), number(name + "_bottom", 1, kMostInRatio)};
    else if constexpr (std::is_same_v<T, Moment>)
        return {number(name, days("0000-01-01"), days("9999-12-31")), number(name + "_minute", 0, kMinutesInDay - 1),
                number(name + "_utc_offset", -kFurthestUtcOffset, kFurthestUtcOffset)};
    else if constexpr (std::is_same_v<T, AnyKey>)
        return {text(name + "_table", {}), {name + "_key", "INTEGER", null, {}, {}, {}}};
    else if constexpr (std::is_same_v<T, Temperature>)
        return {number(name, (*read_temperature("-10000")).tenths, (*read_temperature("10000")).tenths)};
    else if constexpr (std::is_same_v<T, Acidity>)
        return {number(name, (*read_acidity("-15")).hundredths, (*read_acidity("15")).hundredths)};
    else if constexpr (std::is_same_v<T, int>)
        return {number(name, 0, kLargestStatedCount)};
    else
        return {text(name, as_strings(kWords<T>))};
}

template <class Fact>
std::vector<ExpectedColumn> expected_columns() {
    std::vector<ExpectedColumn> all{{"key", "INTEGER", true, {}, {}, {}}};  // a rowid alias: never NULL, never said
    if constexpr (Line<Fact>) {
        all.push_back({"head", "INTEGER", false, std::string{Fact::Head::kTable}, {}, {}});
        all.push_back(
            {"position", "INTEGER", false, {}, std::pair<std::int64_t, std::int64_t>{1, kLargestStatedCount}, {}});
    } else {
        all.push_back({"code", "TEXT", false, {}, {}, {}});
    }
    for_each_field<Fact>([&](const auto& each) {
        using Member = std::remove_reference_t<decltype(std::declval<Fact&>().*each.member)>;
        for (auto& column : columns_of<Member>(std::string{each.name})) {
            column.part = each.part && column.name.ends_with("_top");
            all.push_back(std::move(column));
        }
    });
    return all;
}

struct ExpectedTable {
    std::string name;
    std::vector<ExpectedColumn> columns;
};

std::vector<ExpectedTable> expected_tables() {
    std::vector<ExpectedTable> tables;
    Shop{}.for_each_list([&]<class Fact>(const std::vector<Fact>&) {
        tables.push_back({std::string{Fact::kTable}, expected_columns<Fact>()});
    });
    return tables;
}

// The small shop, so that every table has a row to try values on.
SQLite::Database shop_to_try(const TempFolder& temp) {
    write_files(temp / "in", small_shop_files());
    OpenShop::create(temp / "a", {"new", {}}, read_csv_folder(temp / "in"));
    return connect(temp / "a", Access::read_write);
}

bool takes(SQLite::Database& db, std::string_view table, const std::string& column, const std::string& value) {
    db.exec("SAVEPOINT trial");
    const int result = db.tryExec(fmt::format("UPDATE \"{}\" SET \"{}\" = {}", table, column, value));
    db.exec("ROLLBACK TO trial");
    db.exec("RELEASE trial");
    return result == SQLite::OK;
}

}  // namespace

TEST_CASE("every kind of fact has its table, with its columns in order") {
    const TempFolder temp;
    auto db = connect_new(temp / "a");
    for (const ExpectedTable& table : expected_tables()) {
        INFO("table ", table.name);
        const auto& expected = table.columns;
        SQLite::Statement info{
            db, fmt::format("SELECT name, type, \"notnull\", pk FROM pragma_table_info('{}')", table.name)};
        std::size_t at = 0;
        for (; info.executeStep(); ++at) {
            REQUIRE(at < expected.size());
            CHECK(info.getColumn(0).getString() == expected[at].name);
            CHECK(info.getColumn(1).getString() == expected[at].type);
            CHECK((info.getColumn(2).getInt() == 0) == expected[at].may_be_null);
            CHECK(info.getColumn(3).getInt() == (at == 0 ? 1 : 0));
        }
        CHECK(at == expected.size());

        std::set<std::pair<std::string, std::string>> wanted;
        for (const auto& column : expected)
            if (!column.refers_to.empty()) wanted.emplace(column.name, column.refers_to);
        std::set<std::pair<std::string, std::string>> found;
        SQLite::Statement keys{db, fmt::format("SELECT \"from\", \"table\", on_delete, on_update FROM "
                                               "pragma_foreign_key_list('{}')",
                                               table.name)};
        while (keys.executeStep()) {
            found.emplace(keys.getColumn(0).getString(), keys.getColumn(1).getString());
            CHECK(keys.getColumn(2).getString() == "NO ACTION");
            CHECK(keys.getColumn(3).getString() == "NO ACTION");
        }
        CHECK(found == wanted);

        // Indexes on references, one each, and on nothing else.
        std::set<std::string> indexed;
        SQLite::Statement indexes{db, fmt::format("SELECT c.name FROM pragma_index_list('{}') AS i, "
                                                  "pragma_index_info(i.name) AS c",
                                                  table.name)};
        while (indexes.executeStep()) CHECK(indexed.insert(indexes.getColumn(0).getString()).second);
        CHECK(indexed.size() == wanted.size());
        for (const auto& [column, other] : wanted) CHECK(indexed.contains(column));
    }
}

TEST_CASE("what is written and read has every column") {
    const auto tables = expected_tables();
    REQUIRE(tables.size() == row_kinds().size());
    for (std::size_t kind = 0; kind < tables.size(); ++kind) {
        CHECK(row_kinds()[kind].table == tables[kind].name);
        std::vector<std::string> names;
        for (const auto& column : tables[kind].columns) names.push_back(column.name);
        CHECK(row_kinds()[kind].columns == names);
    }
}

TEST_CASE("the tables are strict, references wait for the end, and nothing acts by itself") {
    const TempFolder temp;
    auto db = connect_new(temp / "a");
    CHECK(db.execAndGet("SELECT count(*) FROM pragma_table_list WHERE type = 'table' AND NOT strict AND name NOT LIKE "
                        "'sqlite%'")
              .getInt() == 0);
    CHECK(db.execAndGet("SELECT count(*) FROM sqlite_schema WHERE type NOT IN ('table', 'index')").getInt() == 0);
    SQLite::Statement tables{db, "SELECT sql FROM sqlite_schema WHERE type = 'table'"};
    while (tables.executeStep()) {
        const std::string sql = tables.getColumn(0).getString();
        const auto count = [&](std::string_view words) {
            int found = 0;
            for (auto at = sql.find(words); at != std::string::npos; at = sql.find(words, at + 1)) ++found;
            return found;
        };
        CHECK(count("REFERENCES") == count("DEFERRABLE INITIALLY DEFERRED"));
        for (const auto words : {"UNIQUE", "CASCADE", "GENERATED", "COLLATE", "DEFAULT"}) CHECK(count(words) == 0);
    }
    CHECK(db.execAndGet("PRAGMA application_id").getInt64() == kApplicationId);
    CHECK(db.execAndGet("PRAGMA user_version").getInt64() == kSchemaVersion);
}

TEST_CASE("the tables are those of their version: whoever changes schema.sql raises the version") {
    // DEVELOPERS.md, "Change the schema". What was given out is never written over.
    const std::map<std::uint32_t, std::uint64_t> given_out{
        {3, 5'055'967'182'454'141'522}, {4, 16'592'282'235'383'085'462U}};
    REQUIRE(given_out.contains(kSchemaVersion));
    CHECK(given_out.at(kSchemaVersion) == hash_of(without_comments_and_blanks(schema_sql())));
    for (auto version = kOldestSchemaVersion; version < kSchemaVersion; ++version) {
        const auto kept = std::filesystem::path{DYESTEAD_SOURCE_DIR} / "tests" / "db" / "older" /
                          fmt::format("version_{}.sql", version);
        CHECK_MESSAGE(std::filesystem::exists(kept), "a file of that version, to try bringing it up: ", kept.string());
    }
}

TEST_CASE("every column takes what the gate lets in, and no more") {
    const TempFolder temp;
    auto db = shop_to_try(temp);
    for (const ExpectedTable& expected : expected_tables()) {
        const std::string& table = expected.name;
        INFO("table ", table);
        CHECK_FALSE(takes(db, table, "key", "0"));
        for (const auto& column : expected.columns) {
            INFO("column ", column.name);
            if (column.range) {
                const auto [low, high] = *column.range;
                // A value of a field that stands in several columns may be blank in this row; then any
                // value alone is refused, which the last check of this case sees to.
                const bool grouped = column.may_be_null && !takes(db, table, column.name, fmt::format("{}", low));
                if (!grouped && !column.part) CHECK(takes(db, table, column.name, fmt::format("{}", high)));
                if (column.part) {
                    const std::string whole = column.name.substr(0, column.name.size() - 4) + "_bottom";
                    if (!grouped) CHECK(takes(db, table, column.name, fmt::format("\"{}\"", whole)));
                    CHECK_FALSE(takes(db, table, column.name, fmt::format("ifnull(\"{}\", -1) + 1", whole)));
                }
                CHECK_FALSE(takes(db, table, column.name, fmt::format("{}", low - 1)));
                CHECK_FALSE(takes(db, table, column.name, fmt::format("{}", high + 1)));
                CHECK_FALSE(takes(db, table, column.name, "1.5"));
            }
            for (const auto& word : column.words)
                if (!column.may_be_null) CHECK(takes(db, table, column.name, fmt::format("'{}'", word)));
            if (!column.words.empty()) CHECK_FALSE(takes(db, table, column.name, "'nonsense'"));
            if (column.type == "TEXT" && column.words.empty() && !column.name.ends_with("_unit"))
                CHECK_FALSE(takes(db, table, column.name, "''"));
            if (column.name != "key") CHECK(takes(db, table, column.name, "NULL") <= column.may_be_null);
        }
    }
    // Half an amount is none.
    CHECK_FALSE(takes(db, "drying", "amount", "NULL"));
    CHECK_FALSE(takes(db, "drying", "time_mark", "NULL"));
    CHECK_FALSE(takes(db, "colour", "match_strength_top", "NULL"));
}
