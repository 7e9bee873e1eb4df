#include "db/import.h"

#include <doctest/doctest.h>

#include <cstdlib>

#include "db/backup.h"
#include "db/csv_folder.h"
#include "db/open_shop.h"
#include "db/trouble.h"
#include "tests/support/small_shop.h"
#include "tests/support/temp_folder.h"

using namespace dyestead;
using namespace dyestead::db;
using namespace dyestead::test;

namespace {

struct Place {
    TempFolder temp;
    Place() {
        setenv("XDG_DATA_HOME", (temp / "data").c_str(), 1);
        write_files(temp / "in", small_shop_files());
    }
    ~Place() { unsetenv("XDG_DATA_HOME"); }
};

}  // namespace

TEST_CASE("a folder comes into a new file, and into an old one only when told") {
    Place place;
    const auto file = place.temp / "a.dyestead";
    import_folder(place.temp / "in", file, Existing::refuse);
    const Shop first = read_csv_folder(place.temp / "in");
    CHECK(same_shop(OpenShop::open(file, Access::read_only).shop(), first));

    auto files = small_shop_files();
    files["person.csv"] = "code,name\r\nada,Ada\r\nbo,Bo\r\ncy,Cy\r\n";
    write_files(place.temp / "in", files);
    const std::string bytes = bytes_of(file);
    CHECK_THROWS_AS(import_folder(place.temp / "in", file, Existing::refuse), ShopTrouble);
    CHECK(bytes_of(file) == bytes);

    import_folder(place.temp / "in", file, Existing::replace);
    auto open = OpenShop::open(file, Access::read_only);
    CHECK(same_shop(open.shop(), read_csv_folder(place.temp / "in")));
    CHECK(open.check().empty());
    const auto backups = files_in(backup_folder(open.file_id()));
    REQUIRE(backups.size() == 1);
    const auto backup = backup_folder(open.file_id()) / backups.begin()->first;
    CHECK(backup.extension() == ".dyestead");
    CHECK(same_shop(OpenShop::open(backup, Access::read_only).shop(), first));

    // A second one of the day stands beside the first.
    CHECK(take_backup(open) != backup);
    CHECK(files_in(backup_folder(open.file_id())).size() == 2);
}

TEST_CASE("a folder with a mistake changes nothing") {
    Place place;
    const auto file = place.temp / "a.dyestead";
    auto files = small_shop_files();
    files["vat.csv"].replace(files["vat.csv"].find("2026"), 4, "26");
    write_files(place.temp / "bad", files);
    CHECK_THROWS_AS(import_folder(place.temp / "bad", file, Existing::refuse), RecordsRefused);
    CHECK_FALSE(std::filesystem::exists(file));
    import_folder(place.temp / "in", file, Existing::refuse);
    const std::string bytes = bytes_of(file);
    CHECK_THROWS_AS(import_folder(place.temp / "bad", file, Existing::replace), RecordsRefused);
    CHECK(bytes_of(file) == bytes);
}

TEST_CASE("what is not a whole shop is never replaced") {
    Place place;
    const auto file = place.temp / "a.dyestead";
    write_bytes(file, "Dear Ada");
    CHECK_THROWS_AS(import_folder(place.temp / "in", file, Existing::replace), ShopTrouble);
    CHECK(bytes_of(file) == "Dear Ada");
}
