// Files of earlier versions. tests/db/older/version_2.sql is a file that the program of that time made, as text: its
// tables, the records of a small shop in every kind, its seals and its log.
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <map>
#include <optional>

#include "db/backup.h"
#include "db/connection.h"
#include "db/csv_folder.h"
#include "db/open_shop.h"
#include "db/seal.h"
#include "db/trouble.h"
#include "tests/support/failing_disk.h"
#include "tests/support/small_shop.h"
#include "tests/support/temp_folder.h"

using namespace dyestead;
using namespace dyestead::db;
using namespace dyestead::test;

namespace {

// For each table its rows, each cell under the name of its column.
using Rows = std::map<std::string, std::vector<std::map<std::string, std::string>>>;

SQLite::Database look_into(const std::filesystem::path& path) {
    return SQLite::Database{path.string(), SQLite::OPEN_READWRITE};  // a journal may have to be played back
}

Rows rows_in(const std::filesystem::path& path) {
    auto db = look_into(path);
    Rows all;
    SQLite::Statement tables{db, "SELECT name FROM sqlite_schema WHERE type = 'table'"};
    while (tables.executeStep()) {
        const std::string table = tables.getColumn(0);
        SQLite::Statement query{db, fmt::format("SELECT * FROM \"{}\" ORDER BY 1", table)};
        auto& rows = all[table];
        while (query.executeStep()) {
            rows.emplace_back();
            for (int i = 0; i < query.getColumnCount(); ++i)
                rows.back()[query.getColumnName(i)] =
                    fmt::format("{} {}", query.getColumn(i).getType(), query.getColumn(i).getString());
        }
    }
    return all;
}

std::uint32_t version_of(const std::filesystem::path& path) {
    auto db = look_into(path);
    return schema_version(db);
}

struct Older {
    TempFolder temp;
    std::filesystem::path file = temp / "ours.dyestead";
    std::filesystem::path backups = temp / "data" / "dyestead" / "backups";

    explicit Older(std::uint32_t version = kOldestSchemaVersion) {
        setenv("XDG_DATA_HOME", (temp / "data").c_str(), 1);
        SQLite::Database{file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE}.exec(
            bytes_of(fmt::format(DYESTEAD_SOURCE_DIR "/tests/db/older/version_{}.sql", version)));
    }
    ~Older() { unsetenv("XDG_DATA_HOME"); }

    void change(const std::string& sql) const { look_into(file).exec(sql); }
    std::vector<std::filesystem::path> kept() const {
        std::vector<std::filesystem::path> files;
        std::error_code none;
        for (const auto& entry : std::filesystem::recursive_directory_iterator{backups, none})
            if (entry.is_regular_file()) files.push_back(entry.path());
        return files;
    }
    // Opened both ways it gives this trouble, stays the same to the byte, and leaves no backup.
    void check_refused(TroubleId expected, const std::string& table = {}) const {
        const std::string before = bytes_of(file);
        for (const Access access : {Access::read_only, Access::read_write}) {
            try {
                OpenShop::open(file, access);
                FAIL("was opened");
            } catch (const ShopTrouble& trouble) {
                CHECK(trouble.trouble.id == expected);
                CHECK(trouble.trouble.args.at(0) == TroubleArg{"path", file.string()});
                if (!table.empty()) CHECK(trouble.trouble.args.at(1) == TroubleArg{"table", table});
            }
        }
        CHECK(bytes_of(file) == before);
        CHECK(kept().empty());
    }
};

// Every row and cell that was there is there; what is new is blank. The seals are of their own.
void check_same_rows(const Rows& before, const Rows& after) {
    for (const auto& [table, rows] : before) {
        if (table == "seal") continue;
        INFO("table ", table);
        REQUIRE(after.contains(table));
        const auto& now = after.at(table);
        REQUIRE(now.size() == rows.size());
        for (std::size_t i = 0; i < rows.size(); ++i)
            for (const auto& [column, cell] : now[i]) {
                INFO("column ", column);
                const auto at = rows[i].find(column);
                CHECK(cell == (at == rows[i].end() ? fmt::format("{} ", SQLite::Null) : at->second));
            }
    }
}

Change renamed(const Shop& shop, const std::string& name) {
    Change change;
    Person person = shop.all<Person>().front();
    person.name = name;
    change.put.all<Person>().push_back(person);
    return change;
}

}  // namespace

TEST_CASE("a file of each earlier version is brought up: every row is there, the seals are good, a backup holds it") {
    for (auto version = kOldestSchemaVersion; version < kSchemaVersion; ++version)
        for (const Access access : {Access::read_only, Access::read_write}) {
            const Older older{version};
            const Rows before = rows_in(older.file);
            REQUIRE(before.at("person").size() > 1);
            REQUIRE(before.at("change").size() > 1);
            {
                OpenShop open = OpenShop::open(older.file, access);
                REQUIRE(open.brought_up());
                CHECK(open.brought_up()->from == version);
                CHECK(older.kept() == std::vector{open.brought_up()->backup});
                CHECK(open.brought_up()->backup.parent_path() == backup_folder(open.file_id()));
                CHECK(open.check().empty());
                CHECK(open.shop().all<Person>().size() == before.at("person").size());
            }
            CHECK(version_of(older.file) == kSchemaVersion);
            check_same_rows(before, rows_in(older.file));
            CHECK(version_of(older.kept().front()) == version);
            CHECK(rows_in(older.kept().front()) == before);
            // Once is enough.
            CHECK_FALSE(OpenShop::open(older.file, access).brought_up());
            CHECK(older.kept().size() == 1);
        }
}

TEST_CASE("columns that version 2 did not have stand in the midst of those it had") {
    const Older older{2};
    const Rows before = rows_in(older.file);
    REQUIRE_FALSE(before.contains("sowing_rule"));
    REQUIRE_FALSE(before.at("vat_step").front().contains("begun"));
    const OpenShop open = OpenShop::open(older.file, Access::read_write);
    const auto& steps = open.shop().all<VatStep>();
    REQUIRE(steps.size() == before.at("vat_step").size());
    for (const VatStep& step : steps) CHECK_FALSE(step.begun);
    // The program of that time had put this down, and so the seals of that time held it.
    CHECK(std::ranges::any_of(
        steps, [](const VatStep& step) { return step.what == "steeping, by the clock in the shed"; }));
    CHECK(open.shop().all<SowingRule>().empty());
}

TEST_CASE("the tables are then those of a new file, word for word") {
    const Older older;
    OpenShop::open(older.file, Access::read_write);
    OpenShop::create(older.temp / "new", {"new", {}}, Shop{});
    const auto schema = [](const std::filesystem::path& path) {
        std::map<std::string, std::string> all;
        auto db = look_into(path);
        SQLite::Statement query{db, "SELECT type || name, sql FROM sqlite_schema"};
        while (query.executeStep()) all[query.getColumn(0)] = query.getColumn(1).getString();
        return all;
    };
    CHECK(schema(older.file) == schema(older.temp / "new"));
}

TEST_CASE("today's tables under the number before are brought up just so") {
    const Older older;
    write_files(older.temp / "in", small_shop_files());
    const Shop shop = read_csv_folder(older.temp / "in");
    const auto path = older.temp / "latest";
    OpenShop::create(path, {"new", {}}, shop);
    look_into(path).exec("PRAGMA user_version = 2");
    const OpenShop open = OpenShop::open(path, Access::read_write);
    CHECK(open.brought_up());
    CHECK(same_shop(open.shop(), shop));
}

TEST_CASE("undo reaches back to the bringing up and no further, and that can be said") {
    const Older older;
    Shop first;
    {
        OpenShop open = OpenShop::open(older.file, Access::read_write);
        first = open.shop();
        CHECK_FALSE(open.next_undo());
        CHECK(open.undo_is_closed());
        CHECK(open.undo() == Committed::yes);  // asked for all the same, it does nothing
        CHECK(same_shop(open.shop(), first));
        REQUIRE(open.commit({"one", {}}, renamed(first, "Mia")) == Committed::yes);
    }
    OpenShop open = OpenShop::open(older.file, Access::read_write);
    REQUIRE(open.next_undo());
    CHECK(open.next_undo()->code == "one");
    CHECK_FALSE(open.undo_is_closed());
    CHECK(open.undo() == Committed::yes);
    CHECK(same_shop(open.shop(), first));
    CHECK(open.undo_is_closed());
    CHECK(open.redo() == Committed::yes);
    CHECK(open.shop().all<Person>().front().name == "Mia");
    CHECK(open.check().empty());
}

TEST_CASE("a new file's log is not closed") {
    const TempFolder temp;
    CHECK_FALSE(OpenShop::create(temp / "a", {"new", {}}, Shop{}).undo_is_closed());
}

TEST_CASE("wherever the disk fails while it is brought up, the file is as it was, and the next try works") {
    FailingDisk disk;
    int failures = 0;
    for (bool failed = true; failed; failures = failures * 5 / 4 + 1) {
        REQUIRE(failures < 100'000);
        const Older older;
        const Rows before = rows_in(older.file);
        disk.fail_after(failures);
        failed = false;
        try {
            OpenShop::open(older.file, Access::read_write);
            disk.heal();
        } catch (const ShopTrouble&) {
            disk.heal();
            failed = true;
            INFO("failed after ", failures, " operations");
            CHECK(rows_in(older.file) == before);
            CHECK(version_of(older.file) == 2);
            CHECK(older.kept().empty());
            CHECK(OpenShop::open(older.file, Access::read_write).brought_up());
        }
        check_same_rows(before, rows_in(older.file));
    }
    CHECK(failures > 100);
}

TEST_CASE("what today's tables do not take is left as it was, with the table named") {
    const Older older;
    // A share of more than the whole, as that version let in. Its seal goes with it: nothing is damaged.
    older.change("DELETE FROM normal_loss; UPDATE seal SET row_count = 0, sum = 0 WHERE table_name = 'normal_loss'");
    older.change("INSERT INTO normal_loss VALUES (5, 'N1', 20000, 'bar', 12, 10)");
    SealBytes bytes;
    bytes.whole(5);
    bytes.text("N1");
    bytes.whole(20'000);
    bytes.text("bar");
    bytes.whole(12);
    bytes.whole(10);
    older.change(fmt::format("UPDATE seal SET row_count = 1, sum = {} WHERE table_name = 'normal_loss'",
                             static_cast<std::int64_t>(hash_of(bytes.bytes()))));
    older.check_refused(TroubleId::shop_older_refused, "normal_loss");
}

TEST_CASE("an earlier file with what this program did not put there is refused") {
    for (const char* sql :
         {"CREATE TRIGGER t AFTER INSERT ON bed BEGIN DELETE FROM bed; END", "CREATE VIEW v AS SELECT 1",
          "CREATE TABLE extra (a)", "ALTER TABLE bed ADD COLUMN slope INTEGER", "CREATE TABLE note (a)"}) {
        const Older older;
        older.change(sql);
        older.check_refused(TroubleId::shop_foreign_table);
    }
}

TEST_CASE("a damaged earlier file is not brought up, so that its damage is not sealed in") {
    const Older older;
    SUBCASE("a number") {
        older.change("UPDATE price SET shelf = shelf + 1");
    }
    SUBCASE("a row less") {
        older.change("DELETE FROM price");
    }
    SUBCASE("a seal less") {
        older.change("DELETE FROM seal WHERE table_name = 'price'");
    }
    older.check_refused(TroubleId::shop_damaged, "price");
}

TEST_CASE("a version from before that is refused, with its own sentence") {
    const Older older;
    older.change("PRAGMA user_version = 1");
    older.check_refused(TroubleId::shop_too_old);
}

TEST_CASE("where it cannot be written to it is left as it was, and that is said") {
    const Older older;
    std::filesystem::create_directories(older.temp / "data");
    std::filesystem::permissions(older.temp / "data", std::filesystem::perms::all);
    const auto folder = older.file.parent_path();
    // Root may write everywhere; a test that root runs is somebody else for a moment.
    const uid_t before = geteuid();
    SUBCASE("the file") {
        std::filesystem::permissions(older.file, std::filesystem::perms{0444});
    }
    SUBCASE("its folder") {
        std::filesystem::permissions(older.file, std::filesystem::perms{0666});
        std::filesystem::permissions(folder, std::filesystem::perms{0555});
    }
    REQUIRE((before != 0 || seteuid(65'534) == 0));
    const std::string bytes = bytes_of(older.file);
    std::optional<TroubleId> found;
    try {
        OpenShop::open(older.file, Access::read_only);
    } catch (const ShopTrouble& trouble) {
        found = trouble.trouble.id;
    }
    REQUIRE(seteuid(before) == 0);
    std::filesystem::permissions(folder, std::filesystem::perms{0755});
    CHECK(found == TroubleId::shop_older_unwritable);
    CHECK(bytes_of(older.file) == bytes);
    CHECK(older.kept().empty());
}

TEST_CASE("without a place for its backup it is left as it was") {
    const Older older;
    write_bytes(older.temp / "data", "no folder");
    older.check_refused(TroubleId::shop_older_unsaved);
}
