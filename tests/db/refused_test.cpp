// Files that are no shop of ours, or no longer whole: refused, and left as they were.
#include <SQLiteCpp/Database.h>
#include <doctest/doctest.h>

#include <fstream>

#include "db/connection.h"
#include "db/csv_folder.h"
#include "db/open_shop.h"
#include "db/trouble.h"
#include "tests/support/small_shop.h"
#include "tests/support/temp_folder.h"

using namespace dyestead;
using namespace dyestead::db;
using namespace dyestead::test;

namespace {

Shop small_shop() {
    const TempFolder temp;
    write_files(temp / "in", small_shop_files());
    return read_csv_folder(temp / "in");
}

// Opened both ways, it gives this trouble and stays the same to the byte.
void check_refused(const std::filesystem::path& path, TroubleId expected) {
    const std::string before = bytes_of(path);
    for (const Access access : {Access::read_only, Access::read_write}) {
        try {
            OpenShop::open(path, access);
            FAIL("was opened");
        } catch (const ShopTrouble& trouble) {
            CHECK(trouble.trouble.id == expected);
            CHECK(trouble.trouble.args.at(0) == TroubleArg{"path", path.string()});
        }
    }
    CHECK(bytes_of(path) == before);
}

std::string shop_bytes() {
    const TempFolder temp;
    OpenShop::create(temp / "a", {"new", {}}, small_shop());
    return bytes_of(temp / "a");
}

void write_byte(const std::filesystem::path& path, std::size_t at, char byte) {
    std::fstream file{path, std::ios::binary | std::ios::in | std::ios::out};
    file.seekp(static_cast<std::streamoff>(at));
    file.put(byte);
}

}  // namespace

TEST_CASE("what is not a shop is refused untouched") {
    const TempFolder temp;
    const auto path = temp / "a.dyestead";
    const std::string good = shop_bytes();
    SUBCASE("nothing there") {
        try {
            OpenShop::open(path, Access::read_write);
            FAIL("was opened");
        } catch (const ShopTrouble& trouble) {
            CHECK(trouble.trouble.id == TroubleId::no_such_file);
        }
        CHECK_FALSE(std::filesystem::exists(path));
    }
    SUBCASE("empty") {
        write_bytes(path, "");
        check_refused(path, TroubleId::file_empty);
    }
    SUBCASE("a letter") {
        write_bytes(path, "Dear Ada");
        check_refused(path, TroubleId::not_a_shop);
        write_bytes(path, std::string(5'000, 'x'));
        check_refused(path, TroubleId::not_a_shop);
    }
    SUBCASE("another program's database") {
        {
            SQLite::Database other{path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
            other.exec("CREATE TABLE t (a)");
        }
        check_refused(path, TroubleId::not_a_shop);
    }
    SUBCASE("of another version") {
        std::string bytes = good;
        // user_version, big-endian at 60: SQLite's "Database File Format", section 1.3
        bytes[63] = static_cast<char>(kSchemaVersion + 1);
        write_bytes(path, bytes);
        check_refused(path, TroubleId::shop_newer);
    }
    SUBCASE("cut short") {
        for (const std::size_t pages : {1U, 2U, 20U}) {
            write_bytes(path, good.substr(0, pages * 4'096));
            check_refused(path, TroubleId::shop_damaged);
        }
        write_bytes(path, good.substr(0, good.size() - 1'000));
        check_refused(path, TroubleId::shop_damaged);
    }
    SUBCASE("a trigger, a view or a table of somebody else's") {
        for (const char* sql :
             {"CREATE TRIGGER t AFTER INSERT ON bed BEGIN DELETE FROM bed; END", "CREATE VIEW v AS SELECT 1",
              "CREATE TABLE extra (a)", "ALTER TABLE bed ADD COLUMN slope INTEGER", "CREATE INDEX i ON bed (name)"}) {
            write_bytes(path, good);
            SQLite::Database{path.string(), SQLite::OPEN_READWRITE}.exec(sql);
            check_refused(path, TroubleId::shop_foreign_table);
        }
    }
    SUBCASE("a row changed by another program") {
        write_bytes(path, good);
        SQLite::Database{path.string(), SQLite::OPEN_READWRITE}.exec("UPDATE price SET shelf = shelf + 1");
        check_refused(path, TroubleId::shop_damaged);
    }
}

TEST_CASE("a flipped byte is refused or does no harm, and never gives wrong data") {
    const TempFolder temp;
    const auto path = temp / "a.dyestead";
    const std::string good = shop_bytes();
    const Shop expected = small_shop();
    int refused = 0;
    int harmless = 0;
    write_bytes(path, good);
    for (std::size_t at = 0; at < good.size(); at += 389) {
        write_byte(path, at, static_cast<char>(good[at] ^ 0x5A));
        try {
            const auto open = OpenShop::open(path, Access::read_only);
            REQUIRE_MESSAGE(same_shop(open.shop(), expected), "wrong data in silence, byte ", at);
            ++harmless;
        } catch (const ShopTrouble&) {
            ++refused;
        }
        write_byte(path, at, good[at]);
    }
    CHECK(bytes_of(path) == good);
    CHECK(refused > 10);  // most of so small a file is room never used
    CHECK(harmless > 0);
}

TEST_CASE("a flipped byte inside a row is seen, though SQLite's own check sees nothing") {
    const TempFolder temp;
    const auto path = temp / "a.dyestead";
    std::string bytes = shop_bytes();
    // The note of a harvest, whose letters stand in the file as they are.
    const auto at = bytes.find("dug before the rain");
    REQUIRE(at != std::string::npos);
    bytes[at] = 'D';
    write_bytes(path, bytes);
    {
        SQLite::Database db{path.string(), SQLite::OPEN_READONLY};
        CHECK(db.execAndGet("PRAGMA integrity_check").getString() == "ok");
    }
    check_refused(path, TroubleId::shop_damaged);
}
