#include "db/restore.h"

#include <SQLiteCpp/Database.h>
#include <doctest/doctest.h>

#include <cstdlib>

#include "db/backup.h"
#include "db/csv_folder.h"
#include "db/import.h"
#include "db/open_shop.h"
#include "db/trouble.h"
#include "tests/support/small_shop.h"
#include "tests/support/temp_folder.h"

using namespace dyestead;
using namespace dyestead::db;
using namespace dyestead::test;

namespace {

// A shop with a backup, and then damaged as a failing disk might.
struct Damaged {
    TempFolder temp;
    std::filesystem::path file = temp / "ours.dyestead";
    std::filesystem::path backup;
    std::string id;

    Damaged() {
        setenv("XDG_DATA_HOME", (temp / "data").c_str(), 1);
        write_files(temp / "in", small_shop_files());
        import_folder(temp / "in", file, Existing::refuse);
        {
            auto open = OpenShop::open(file, Access::read_write);
            backup = take_backup(open);
            id = open.file_id();
        }
        SQLite::Database{file.string(), SQLite::OPEN_READWRITE}.exec("UPDATE price SET shelf = shelf + 1");
    }
    ~Damaged() { unsetenv("XDG_DATA_HOME"); }
};

}  // namespace

TEST_CASE("the backup of a damaged file is laid beside it and opens; the damaged one stays as it is") {
    const Damaged shop;
    const std::string bytes = bytes_of(shop.file);
    CHECK_THROWS_AS(OpenShop::open(shop.file, Access::read_only), ShopTrouble);
    const auto backup = newest_backup(shop.file);
    REQUIRE(backup);
    CHECK(backup->path == shop.backup);
    const auto beside = lay_beside(*backup, shop.file);
    CHECK(beside.parent_path() == shop.file.parent_path());
    CHECK(same_shop(OpenShop::open(beside, Access::read_only).shop(), read_csv_folder(shop.temp / "in")));
    CHECK(bytes_of(shop.file) == bytes);
    // Done twice, the first one is not written over.
    CHECK(lay_beside(*backup, shop.file) != beside);
}

TEST_CASE("of several backups the newest is taken; what is no backup is left alone") {
    const Damaged shop;
    const auto folder = backup_folder(shop.id);
    const auto put = [&](const char* name) { std::filesystem::copy_file(shop.backup, folder / name); };
    put("2031-01-05-9.dyestead");
    put("2031-01-05-10.dyestead");
    put("2031-01-05.dyestead");
    put("2030-12-31.dyestead");
    put("2040-01-01.txt");
    put("notes.dyestead");
    CHECK(newest_backup(shop.file)->path.filename() == "2031-01-05-10.dyestead");
    CHECK(newest_backup(shop.file)->taken == day_of(2031, 1, 5));
}

TEST_CASE("no backup is found of a letter, of nothing, of a file whose id leads elsewhere") {
    const Damaged shop;
    write_bytes(shop.temp / "letter.dyestead", std::string(5'000, 'x'));
    CHECK_FALSE(newest_backup(shop.temp / "letter.dyestead"));
    CHECK_FALSE(newest_backup(shop.temp / "nowhere.dyestead"));
    SQLite::Database{shop.file.string(), SQLite::OPEN_READWRITE}.exec(
        "UPDATE file SET id = '../../../../../../../../../../..'");
    CHECK_FALSE(newest_backup(shop.file));
}

TEST_CASE("where nothing can be written beside it, that is said") {
    const Damaged shop;
    CHECK_THROWS_AS(lay_beside(*newest_backup(shop.file), shop.temp / "no such folder" / "a.dyestead"), ShopTrouble);
}
