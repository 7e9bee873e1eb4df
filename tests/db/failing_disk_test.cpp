#include "tests/support/failing_disk.h"

#include <doctest/doctest.h>

#include "db/csv_folder.h"
#include "db/new_key.h"
#include "db/open_shop.h"
#include "db/trouble.h"
#include "tests/support/small_shop.h"
#include "tests/support/temp_folder.h"

using namespace dyestead;
using namespace dyestead::db;
using namespace dyestead::test;

TEST_CASE("wherever the disk fails during a change, file and memory are as before, and the next try works") {
    const TempFolder temp;
    write_files(temp / "in", small_shop_files());
    OpenShop::create(temp / "good", {"new", {}}, read_csv_folder(temp / "in"));
    FailingDisk disk;
    int failures = 0;
    for (bool failed = true; failed; ++failures) {
        REQUIRE(failures < 500);
        const auto path = temp / ("a" + std::to_string(failures));
        std::filesystem::copy_file(temp / "good", path);
        auto open = OpenShop::open(path, Access::read_write);
        const Shop before = open.shop();
        Change change;
        change.put.all<Person>().push_back({{new_key<Person>(), "cy"}, std::string(9'000, 'y')});
        change.remove(before.all<Offer>().front().key);
        const Shop after = applied(before, change);
        disk.fail_after(failures);
        failed = false;
        try {
            const Committed done = open.commit({"x", {}}, change);
            disk.heal();
            CHECK(done == Committed::yes);
            CHECK(same_shop(open.shop(), after));
        } catch (const ShopTrouble& trouble) {
            disk.heal();
            failed = true;
            INFO("failed after ", failures, " operations");
            CHECK((trouble.trouble.id == TroubleId::disk_full || trouble.trouble.id == TroubleId::cannot_write));
            CHECK(same_shop(open.shop(), before));
            CHECK(same_shop(OpenShop::open(path, Access::read_only).shop(), before));
            CHECK(open.commit({"x", {}}, change) == Committed::yes);
        }
        CHECK(same_shop(OpenShop::open(path, Access::read_only).shop(), after));
        CHECK(open.check().empty());
    }
    CHECK(failures > 10);
}

TEST_CASE("wherever the disk fails while a file is made, there is no file") {
    const TempFolder temp;
    write_files(temp / "in", small_shop_files());
    const Shop shop = read_csv_folder(temp / "in");
    FailingDisk disk;
    bool made = false;
    for (int count = 0; !made; count = count * 3 / 2 + 1) {
        REQUIRE(count < 100'000);
        std::filesystem::create_directories(temp / "out");
        disk.fail_after(count);
        try {
            OpenShop::create(temp / "out" / "a", {"new", {}}, shop);
            disk.heal();
            made = true;
        } catch (const ShopTrouble&) {
            disk.heal();
            CHECK(files_in(temp / "out").empty());
        }
    }
    CHECK(same_shop(OpenShop::open(temp / "out" / "a", Access::read_only).shop(), shop));
}
