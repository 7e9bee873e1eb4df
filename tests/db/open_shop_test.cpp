#include "db/open_shop.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <doctest/doctest.h>
#include <sqlite3.h>

#include <algorithm>

#include "db/connection.h"
#include "db/csv_folder.h"
#include "db/load.h"
#include "db/new_key.h"
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

// A bed more, an offer gone, another price.
Change some_change(const Shop& shop) {
    Change change;
    change.put.all<Bed>().push_back(
        {{new_key<Bed>(), "north"}, "north bed", {Quantity::square_centimetres(30'000), Unit::m2, Mark::about}});
    change.remove(shop.all<Offer>().front().key);
    auto price = shop.all<Price>().front();
    price.shelf = Money::hundredths(799);
    change.put.all<Price>().push_back(price);
    return change;
}

template <class Run>
TroubleId trouble_of(Run&& run) {
    try {
        run();
    } catch (const ShopTrouble& trouble) {
        return trouble.trouble.id;
    }
    FAIL("nothing was thrown");
    return {};
}

void apply_inverse(SQLite::Database& db, const std::string& changeset) {
    int size = 0;
    void* inverse = nullptr;
    REQUIRE(sqlite3changeset_invert(static_cast<int>(changeset.size()), changeset.data(), &size, &inverse) ==
            SQLITE_OK);
    const auto abort = [](void*, int, sqlite3_changeset_iter*) { return SQLITE_CHANGESET_ABORT; };
    CHECK(sqlite3changeset_apply(db.getHandle(), size, inverse, nullptr, abort, nullptr) == SQLITE_OK);
    sqlite3_free(inverse);
}

}  // namespace

TEST_CASE("a change is in memory and in the file") {
    const TempFolder temp;
    auto open = OpenShop::create(temp / "a.dyestead", {"new", {}}, small_shop());
    const Change change = some_change(open.shop());
    const Shop expected = applied(open.shop(), change);
    CHECK(open.commit({"edited", {}}, change) == Committed::yes);
    CHECK(same_shop(open.shop(), expected));
    CHECK(open.check().empty());
    const auto again = OpenShop::open(temp / "a.dyestead", Access::read_only);
    CHECK(same_shop(again.shop(), expected));
    CHECK(again.file_id() == open.file_id());
    CHECK(again.file_id().size() == 32);
    CHECK(files_in(temp / "").size() == 1);  // no journal, nothing half-made
}

TEST_CASE("a file is created whole, and never over another") {
    const TempFolder temp;
    write_bytes(temp / "a.dyestead", "mine");
    CHECK(trouble_of([&] { OpenShop::create(temp / "a.dyestead", {"new", {}}, {}); }) == TroubleId::already_there);
    CHECK(bytes_of(temp / "a.dyestead") == "mine");
    write_bytes(temp / "b.dyestead-journal", "another's");
    CHECK(trouble_of([&] { OpenShop::create(temp / "b.dyestead", {"new", {}}, {}); }) == TroubleId::already_there);
    CHECK(trouble_of([&] { OpenShop::create(temp / "no" / "c", {"new", {}}, {}); }) == TroubleId::no_such_folder);
    Shop bad = small_shop();
    bad.all<Offer>().front().supplier.number = 1;  // leads nowhere
    CHECK(trouble_of([&] { OpenShop::create(temp / "d", {"new", {}}, bad); }) == TroubleId::no_such_reference);
    CHECK(files_in(temp / "").size() == 2);
}

TEST_CASE("a change that fails leaves file and memory as they were") {
    const TempFolder temp;
    auto open = OpenShop::create(temp / "a.dyestead", {"new", {}}, small_shop());
    const Shop before = open.shop();
    const std::string bytes = bytes_of(temp / "a.dyestead");
    Change dangling = some_change(before);
    dangling.remove(before.all<Recipe>().front().key);  // its batches are still there
    CHECK(trouble_of([&] { (void)open.commit({"x", {}}, dangling); }) == TroubleId::no_such_reference);
    Change outside = some_change(before);
    auto sale = before.all<SaleLine>().front();
    sale.price = Money::millionths(kLargestStatedMoney.in_millionths() + 1);
    outside.put.all<SaleLine>().push_back(sale);
    CHECK_THROWS_AS((void)open.commit({"x", {}}, outside), std::logic_error);
    CHECK(same_shop(open.shop(), before));
    CHECK(bytes_of(temp / "a.dyestead") == bytes);
    CHECK(open.commit({"good", {}}, some_change(before)) == Committed::yes);
    CHECK(open.check().empty());
}

TEST_CASE("the inverse of each changeset leads back to the seal before it") {
    const TempFolder temp;
    {
        auto open = OpenShop::create(temp / "a.dyestead", {"new", {}}, small_shop());
        CHECK(open.commit({"one", {{"code", "a, b"}}}, some_change(open.shop())) == Committed::yes);
        CHECK(open.commit({"two", {}}, difference(open.shop(), small_shop())) == Committed::yes);
    }
    auto db = connect(temp / "a.dyestead", Access::read_write);
    struct Entry {
        std::string changeset;
        std::int64_t before, after;
    };
    std::vector<Entry> log;
    SQLite::Statement query{db, "SELECT changeset, seal_before, seal_after, title_args FROM change ORDER BY id DESC"};
    while (query.executeStep())
        log.push_back({query.getColumn(0).getString(), query.getColumn(1).getInt64(), query.getColumn(2).getInt64()});
    REQUIRE(log.size() == 3);
    CHECK(log[0].after == log[2].after);  // the second change took the first back
    CHECK(log[2].before == Seals{}.total());
    for (const auto& entry : log) {
        CHECK(seals_of(load_facts(db, temp / "a.dyestead")).total() == entry.after);
        apply_inverse(db, entry.changeset);
        CHECK(seals_of(load_facts(db, temp / "a.dyestead")).total() == entry.before);
    }
    SQLite::Statement title{db, "SELECT title_code, title_args FROM change WHERE id = 2"};
    REQUIRE(title.executeStep());
    CHECK(title.getColumn(0).getString() == "one");
    CHECK(title.getColumn(1).getString() == "code,\"a, b\"\r\n");
}

TEST_CASE("a second reader while the file is open") {
    const TempFolder temp;
    auto writer = OpenShop::create(temp / "a.dyestead", {"new", {}}, small_shop());
    auto reader = OpenShop::open(temp / "a.dyestead", Access::read_only);
    CHECK_FALSE(reader.refresh());
    CHECK(writer.commit({"x", {}}, some_change(writer.shop())) == Committed::yes);
    CHECK_FALSE(same_shop(reader.shop(), writer.shop()));
    CHECK(reader.refresh());
    CHECK(same_shop(reader.shop(), writer.shop()));
    CHECK_FALSE(reader.refresh());
    CHECK(trouble_of([&] {
              (void)reader.commit({"x", {}}, difference(reader.shop(), small_shop()));
          }) == TroubleId::cannot_write);
}

TEST_CASE("of two writers the later one looks again first") {
    const TempFolder temp;
    auto one = OpenShop::create(temp / "a.dyestead", {"new", {}}, small_shop());
    auto two = OpenShop::open(temp / "a.dyestead", Access::read_write);
    CHECK(one.commit({"x", {}}, some_change(one.shop())) == Committed::yes);
    Change change;
    change.put.all<Person>().push_back({{new_key<Person>(), "cy"}, "Cy"});
    CHECK(two.commit({"y", {}}, change) == Committed::file_had_changed);
    CHECK(same_shop(two.shop(), one.shop()));
    CHECK(two.commit({"y", {}}, change) == Committed::yes);
    CHECK(one.refresh());
    CHECK(same_shop(two.shop(), one.shop()));
    CHECK(one.check().empty());
}

TEST_CASE("a file that another program holds is busy, and nothing is lost") {
    const TempFolder temp;
    auto open = OpenShop::create(temp / "a.dyestead", {"new", {}}, small_shop());
    const Shop before = open.shop();
    const Change change = some_change(before);
    {
        SQLite::Database other{(temp / "a.dyestead").string(), SQLite::OPEN_READWRITE};
        SQLite::Transaction held{other, SQLite::TransactionBehavior::IMMEDIATE};
        CHECK(trouble_of([&] { (void)open.commit({"x", {}}, change); }) == TroubleId::shop_busy);
        CHECK(same_shop(open.shop(), before));
    }
    CHECK(open.commit({"x", {}}, change) == Committed::yes);
}

TEST_CASE("a file that was replaced under an open shop is not written to") {
    const TempFolder temp;
    auto open = OpenShop::create(temp / "a.dyestead", {"new", {}}, small_shop());
    { OpenShop::create(temp / "b.dyestead", {"new", {}}, small_shop()); }
    std::filesystem::rename(temp / "b.dyestead", temp / "a.dyestead");
    const std::string bytes = bytes_of(temp / "a.dyestead");
    CHECK(trouble_of([&] { (void)open.commit({"x", {}}, some_change(open.shop())); }) == TroubleId::shop_moved);
    CHECK(bytes_of(temp / "a.dyestead") == bytes);
}

TEST_CASE("new keys are of 63 bits, rise with time and differ") {
    std::vector<std::int64_t> keys;
    for (int i = 0; i < 1'000; ++i) keys.push_back(new_key_number());
    std::ranges::sort(keys);
    CHECK(keys.front() > 0);
    CHECK(std::ranges::adjacent_find(keys) == keys.end());
    // The seconds since 2020 are in the upper half: 2025 had begun when this was written.
    CHECK((keys.front() >> 31) > 5LL * 365 * 86'400);
}
