#include <doctest/doctest.h>

#include <SQLiteCpp/Database.h>

#include "db/backup.h"
#include "db/csv_folder.h"
#include "db/open_shop.h"
#include "db/trouble.h"
#include "tests/support/small_shop.h"
#include "tests/support/temp_folder.h"

namespace dyestead::db {
namespace {

Shop small_shop() {
    const test::TempFolder temp;
    test::write_files(temp / "in", test::small_shop_files());
    return read_csv_folder(temp / "in");
}

// A change that renames a person, and with every third one adds a jotting.
Change some_change(const Shop& shop, int n) {
    Change change;
    Person person = shop.all<Person>().front();
    person.name = "Mia " + std::to_string(n);
    change.put.all<Person>().push_back(person);
    if (n % 3 == 0) {
        Jotting jotting;
        jotting.key.number = 900'000 + n;
        jotting.code = "jotting-" + std::to_string(n);
        jotting.date = day_of(2026, 7, 4);
        jotting.text = "number " + std::to_string(n);
        change.put.all<Jotting>().push_back(jotting);
    }
    return change;
}

constexpr auto kYes = Committed::yes;

}  // namespace

TEST_CASE("all changes are taken back one by one and brought again, across closing and opening") {
    const test::TempFolder folder;
    const auto path = folder / "shop.dyestead";
    OpenShop::create(path, {"first"}, small_shop());
    std::vector<Shop> states;
    {
        OpenShop open = OpenShop::open(path, Access::read_write);
        CHECK_FALSE(open.next_undo());  // what the file began with stays
        CHECK(open.undo() == kYes);     // and asking for it does nothing
        CHECK(same_shop(open.shop(), small_shop()));
        states.push_back(open.shop());
        for (int n = 1; n <= 9; ++n) {
            REQUIRE(open.commit({"change {n}", {{"n", std::to_string(n)}}}, some_change(open.shop(), n)) == kYes);
            states.push_back(open.shop());
        }
    }
    for (int left = 9; left >= 1; --left) {
        OpenShop open = OpenShop::open(path, Access::read_write);
        REQUIRE(open.next_undo());
        CHECK(open.next_undo()->args == std::vector<TroubleArg>{{"n", std::to_string(left)}});
        CHECK(open.undo() == kYes);
        CHECK(same_shop(open.shop(), states[static_cast<std::size_t>(left - 1)]));
        CHECK(open.check().empty());
    }
    OpenShop open = OpenShop::open(path, Access::read_write);
    CHECK_FALSE(open.next_undo());
    for (std::size_t n = 1; n <= 9; ++n) {
        REQUIRE(open.next_redo());
        CHECK(open.next_redo()->args.front().second == std::to_string(n));
        CHECK(open.redo() == kYes);
        CHECK(same_shop(open.shop(), states[n]));
    }
    CHECK_FALSE(open.next_redo());
    CHECK(open.check().empty());
}

TEST_CASE("a new change leaves nothing to redo, and undo goes on from it") {
    const test::TempFolder folder;
    const auto path = folder / "shop.dyestead";
    OpenShop open = OpenShop::create(path, {"first"}, small_shop());
    REQUIRE(open.commit({"one"}, some_change(open.shop(), 1)) == kYes);
    REQUIRE(open.commit({"two"}, some_change(open.shop(), 3)) == kYes);
    CHECK(open.undo() == kYes);
    CHECK(open.next_redo()->code == "two");
    REQUIRE(open.commit({"three"}, some_change(open.shop(), 6)) == kYes);
    CHECK_FALSE(open.next_redo());
    CHECK(open.next_undo()->code == "three");
    CHECK(open.undo() == kYes);
    CHECK(open.next_undo()->code == "one");
}

TEST_CASE("a file that does not hold what its log says is left as it is") {
    const test::TempFolder folder;
    const auto path = folder / "shop.dyestead";
    {
        OpenShop open = OpenShop::create(path, {"first"}, small_shop());
        REQUIRE(open.commit({"one"}, some_change(open.shop(), 1)) == kYes);
    }
    {
        // The log's own seal is changed from outside; the facts are whole.
        SQLite::Database db{path.string(), SQLite::OPEN_READWRITE};
        db.exec("UPDATE change SET seal_before = seal_before + 1 WHERE title_code = 'one'");
    }
    OpenShop open = OpenShop::open(path, Access::read_write);
    const Shop before = open.shop();
    CHECK_THROWS_AS(static_cast<void>(open.undo()), ShopTrouble);
    CHECK(same_shop(open.shop(), before));
    CHECK(same_shop(OpenShop::open(path, Access::read_only).shop(), before));
}

TEST_CASE("a draft is kept by form, replaced, taken away, and is no change") {
    const test::TempFolder folder;
    const auto path = folder / "shop.dyestead";
    OpenShop open = OpenShop::create(path, {"first"}, small_shop());
    open.keep_draft({"harvest", {{"amount", "2 buck"}, {"date", "3 July"}}});
    open.keep_draft({"delivery", {{"from", "the mill"}}});
    open.keep_draft({"harvest", {{"amount", "2 buckets"}}});
    OpenShop again = OpenShop::open(path, Access::read_write);
    const auto drafts = again.drafts();
    REQUIRE(drafts.size() == 2);
    CHECK(drafts[1].form == "harvest");
    CHECK(drafts[1].fields == std::vector<std::pair<std::string, std::string>>{{"amount", "2 buckets"}});
    CHECK_FALSE(open.refresh());  // nobody is told that the shop has changed
    again.keep_draft({"harvest", {}});
    CHECK(again.drafts().size() == 1);
    CHECK_FALSE(again.next_undo());
}

TEST_CASE("old backups: the last fourteen days stay, of each month before the first") {
    const std::vector<std::string> names{
        "2026-06-02.dyestead", "2026-06-02-2.dyestead", "2026-06-20.dyestead", "2026-07-01.dyestead",
        "2026-07-05.dyestead", "2026-07-20.dyestead",   "2026-07-21.dyestead", "notes.txt",
        "2026-06-21.txt"};
    const auto old = old_backups(names, day_of(2026, 7, 22));
    CHECK(old == std::vector<std::string>{"2026-06-02.dyestead", "2026-06-20.dyestead", "2026-07-05.dyestead"});
}

}  // namespace dyestead::db
