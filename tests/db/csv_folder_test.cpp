#include "db/csv_folder.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "db/open_shop.h"
#include "db/trouble.h"
#include "tests/support/small_shop.h"
#include "tests/support/temp_folder.h"

using namespace dyestead;
using namespace dyestead::db;
using namespace dyestead::test;

namespace {

// Puts `to` in the place of `from`, once, in one of the small shop's files.
Files changed(const std::string& file, std::string_view from, std::string_view to) {
    Files files = small_shop_files();
    const auto at = files.at(file).find(from);
    REQUIRE_MESSAGE(at != std::string::npos, file, " lacks ", from);
    files[file].replace(at, from.size(), to);
    return files;
}

Files with_file(const std::string& file, const std::string& text) {
    Files files = small_shop_files();
    files[file] = text;
    return files;
}

std::vector<Trouble> troubles_of(const Files& files) {
    const TempFolder temp;
    write_files(temp / "in", files);
    try {
        read_csv_folder(temp / "in");
    } catch (const RecordsRefused& refused) {
        return refused.troubles;
    }
    return {};
}

std::string arg(const Trouble& trouble, std::string_view name) {
    const auto at = std::ranges::find(trouble.args, name, &TroubleArg::first);
    return at == trouble.args.end() ? "(none)" : at->second;
}

// Exactly one trouble, there.
Trouble only(const Files& files, TroubleId id, const std::string& file, int line, const std::string& column) {
    const auto all = troubles_of(files);
    std::string found;
    for (const auto& each : all)
        found += each.file + ":" + std::to_string(each.line) + " " + each.column + " " + arg(each, "value") + "\n";
    INFO(found);
    REQUIRE(all.size() == 1);
    CHECK(all[0].id == id);
    CHECK(all[0].file.ends_with(file));
    CHECK(all[0].line == line);
    CHECK(all[0].column == column);
    return all[0];
}

}  // namespace

TEST_CASE("the small shop holds every kind of record") {
    const TempFolder temp;
    write_files(temp / "in", small_shop_files());
    const Shop shop = read_csv_folder(temp / "in");
    shop.for_each_list([](const auto& list) {
        using Fact = typename std::remove_cvref_t<decltype(list)>::value_type;
        CHECK_MESSAGE(!list.empty(), std::string{Fact::kTable});
    });
}

TEST_CASE("CSV into a shop file and out again is the same to the byte") {
    const TempFolder temp;
    write_files(temp / "in", small_shop_files());
    const Shop shop = read_csv_folder(temp / "in");
    OpenShop::create(temp / "a.dyestead", {"new", {}}, shop);
    const OpenShop open = OpenShop::open(temp / "a.dyestead", Access::read_only);
    CHECK(same_shop(open.shop(), shop));
    write_csv_folder(open.shop(), temp / "out");
    const Files out = files_in(temp / "out");
    for (const auto& [name, text] : small_shop_files()) CHECK(out.at(name) == text);
    CHECK(out.size() == small_shop_files().size());
}

TEST_CASE("keys that are no hash of a code stand in a column of their own") {
    const TempFolder temp;
    write_files(temp / "in", small_shop_files());
    Shop shop = read_csv_folder(temp / "in");
    shop.all<PaidOut>().front().key.number = 4711;
    auto& lines = shop.all<DeliveryLine>();
    std::ranges::find(lines, 3, &DeliveryLine::position)->key.number = 12;
    shop.sort();
    write_csv_folder(shop, temp / "out");
    CHECK(bytes_of(temp / "out" / "delivery_line.csv").find(",,,12\r\n") != std::string::npos);
    CHECK(bytes_of(temp / "out" / "delivery.csv") == small_shop_files().at("delivery.csv"));
    const Shop back = read_csv_folder(temp / "out");
    CHECK(same_shop(back, shop));
    CHECK_FALSE(same_shop(back, read_csv_folder(temp / "in")));
}

TEST_CASE("a byte-order mark, LF, another column order and other files are read in silence") {
    Files files = small_shop_files();
    files["person.csv"] = "\xEF\xBB\xBFname,code\n\"Bo, the nephew\",bo\n\nAda,ada\n";
    files["notes.txt"] = "nothing of ours";
    files["sales_tax.csv"] = "code,from,rate\n";  // only its heading: none
    files.erase("waiting_share.csv");
    const TempFolder temp;
    write_files(temp / "in", files);
    const Shop shop = read_csv_folder(temp / "in");
    CHECK(shop.all<Person>().size() == 2);
    CHECK(shop.all<SalesTax>().empty());
    CHECK(shop.all<WaitingShare>().empty());
    write_csv_folder(shop, temp / "in");
    CHECK(files_in(temp / "in").at("person.csv") == small_shop_files().at("person.csv"));
    CHECK(files_in(temp / "in").at("sales_tax.csv") == "code,from,rate\r\n");
    CHECK_FALSE(files_in(temp / "in").contains("waiting_share.csv"));
}

TEST_CASE("each mistake in the records is named with its file, line and column") {
    SUBCASE("columns") {
        const auto unknown = only(with_file("bed.csv", "code,name,area,slope\nsouth,south bed,14.5 m2,none\n"),
                                  TroubleId::unknown_column, "bed.csv", 1, "slope");
        CHECK(arg(unknown, "choices") == "code, name, area, key");
        only(with_file("bed.csv", "code,name,area,name\nsouth,south bed,14.5 m2,x\n"), TroubleId::column_twice,
             "bed.csv", 1, "name");
        only(with_file("bed.csv", "code,area\nsouth,14.5 m2\n"), TroubleId::column_missing, "bed.csv", 1, "name");
        const auto few =
            only(with_file("bed.csv", "code,name,area\nsouth,south bed\n"), TroubleId::too_few_cells, "bed.csv", 2, "");
        CHECK(arg(few, "cells") == "2");
        CHECK(arg(few, "columns") == "3");
        only(with_file("bed.csv", "code,name,area\nsouth,south, bed,14.5 m2\n"), TroubleId::too_many_cells, "bed.csv",
             2, "");
    }
    SUBCASE("a unit that is none") {
        const auto trouble =
            only(changed("harvest.csv", "6.85 kg", "6.85 stones"), TroubleId::no_such_unit, "harvest.csv", 2, "amount");
        CHECK(arg(trouble, "value") == "6.85 stones");
    }
    SUBCASE("a unit that does not suit the material") {
        const auto trouble = only(changed("tending_use.csv", "30 l", "30 kg"), TroubleId::wrong_kind_of_amount,
                                  "tending_use.csv", 2, "amount");
        CHECK(arg(trouble, "wanted") == "volume");
        CHECK(arg(trouble, "material") == "compost");
        only(changed("bed.csv", "14.5 m2", "14.5 kg"), TroubleId::wrong_kind_of_amount, "bed.csv", 2, "area");
        only(changed("recipe.csv", "95 g", "95 ml"), TroubleId::wrong_kind_of_amount, "recipe.csv", 2,
             "declared_weight");
        // Oil has a density: litres of it are a mass.
        CHECK(troubles_of(changed("recipe_part.csv", "1 kg", "1 l")).empty());
    }
    SUBCASE("a date that does not exist") {
        only(changed("vat.csv", "2026-07-10", "2026-02-30"), TroubleId::no_such_day, "vat.csv", 2, "date");
        only(changed("vat.csv", "2026-07-10", "10.7.2026"), TroubleId::not_a_date, "vat.csv", 2, "date");
    }
    SUBCASE("a negative weight") {
        only(changed("harvest.csv", "6.85 kg", "-6.85 kg"), TroubleId::below_zero, "harvest.csv", 2, "amount");
    }
    SUBCASE("references and words") {
        const auto trouble =
            only(changed("batch.csv", "R1", "R9"), TroubleId::no_such_reference, "batch.csv", 2, "recipe");
        CHECK(arg(trouble, "kind") == "recipe");
        CHECK(arg(trouble, "value") == "R9");
        const auto word = only(changed("pay.csv", "paid", "lent"), TroubleId::not_one_of, "pay.csv", 3, "standing");
        CHECK(arg(word, "choices") == "own, paid");
        only(changed("person.csv", "Ada", ""), TroubleId::blank, "person.csv", 2, "name");
        only(
            changed("overhead.csv", "1200", "1200.5"), TroubleId::not_a_whole_number, "overhead.csv", 2, "normal_bars");
        only(changed("shop.csv", "EUR", "Euro"), TroubleId::not_one_of, "shop.csv", 2, "currency");
    }
    SUBCASE("a share of more than the whole") {
        const auto trouble = only(changed("waiting_share.csv", "25 %", "2500 %"), TroubleId::more_than_whole,
                                  "waiting_share.csv", 2, "share");
        CHECK(arg(trouble, "value") == "2500 %");
        // A tax is no part of the price it is put on, and a strength no part of anything.
        CHECK(troubles_of(changed("sales_tax.csv", "0 %", "120 %")).empty());
    }
    SUBCASE("times by the clock") {
        for (const char* wrong : {"2026-07-10T08:65+02:00", "2026-07-10T08:05", "08:05", "2026-07-10T08:05+20:00"})
            only(changed("vat_step.csv", "2026-07-10T08:05+02:00", wrong), TroubleId::not_a_moment, "vat_step.csv", 2,
                 "begun");
        only(changed("vat_step.csv", "2026-07-10T", "2026-02-30T"), TroubleId::no_such_day, "vat_step.csv", 2, "begun");
        CHECK(troubles_of(changed("vat_step.csv", "T08:05+02:00", " 06:05Z")).empty());
    }
    SUBCASE("what a note is about") {
        for (const char* wrong : {"drying/Y9", "drying", "dryings/Y1", "drying/Y1/1", "drying/#-3"})
            CHECK(arg(only(changed("note.csv", "drying/Y1", wrong), TroubleId::no_such_record, "note.csv", 3, "about"),
                      "value") == wrong);
        // Records that could not be read are not blamed on the note as well.
        only(changed("supplier.csv", "mill\",", "mill,"), TroubleId::quote_not_closed, "supplier.csv", 2, "name");
    }
    SUBCASE("names twice") {
        const auto trouble =
            only(changed("bed.csv", "south,south bed,14.5 m2", "south,south bed,14.5 m2\r\nsouth,north bed,3 m2"),
                 TroubleId::code_twice, "bed.csv", 3, "code");
        CHECK(arg(trouble, "first_line") == "2");
        only(changed("vat_step.csv", "VAT-1,2", "VAT-1,1"), TroubleId::position_twice, "vat_step.csv", 3, "position");
        only(with_file("person.csv", "code,name,key\nada,Ada,7\nbo,Bo,7\n"), TroubleId::key_twice, "person.csv", 3,
             "key");
    }
    SUBCASE("lots") {
        const auto nobody = only(changed("lot.csv", "L-bars,rose-bar", "L-air,olive\r\nL-bars,rose-bar"),
                                 TroubleId::lot_nobody_made, "lot.csv", 3, "code");
        CHECK(arg(nobody, "lot") == "L-air");
        auto twice = changed("delivery_line.csv", "D1,4,L-sleeves", "D1,4,L-alum");
        twice["lot.csv"].erase(twice["lot.csv"].find("L-sleeves,sleeve\r\n"), 18);
        twice["delivery_line.csv"].replace(twice["delivery_line.csv"].find("300"), 3, "300 g");
        const auto trouble = only(twice, TroubleId::lot_made_twice, "delivery_line.csv", 5, "lot");
        CHECK(arg(trouble, "first_file").ends_with("already_here.csv"));
        CHECK(arg(trouble, "first_line") == "2");
    }
    SUBCASE("the text itself") {
        // What refers to records that could not be read is not blamed as well.
        only(changed("supplier.csv", "mill\",", "mill,"), TroubleId::quote_not_closed, "supplier.csv", 2, "name");
        only(changed("supplier.csv", "mill\",", "mill\" x,"), TroubleId::text_after_quote, "supplier.csv", 2, "name");
        only(changed("person.csv", "Ada", "Ad\xE0"), TroubleId::not_utf8, "person.csv", 2, "name");
    }
    SUBCASE("files") {
        only(with_file("fair.csv", ""), TroubleId::file_empty, "fair.csv", 0, "");
        only(with_file("customers.csv", "code\n"), TroubleId::unknown_file, "customers.csv", 0, "");
        Files files = small_shop_files();
        files["shop.csv"] += "second,Another,EUR,,\r\n";
        CHECK(arg(only(files, TroubleId::shop_rows, "shop.csv", 0, ""), "rows") == "2");
        files.erase("shop.csv");
        CHECK(arg(only(files, TroubleId::shop_rows, "shop.csv", 0, ""), "rows") == "0");
    }
}

TEST_CASE("every mistake in the folder is named, in order of file and line") {
    Files files = changed("vat.csv", "2026-07-10", "2026-02-30");
    files["batch.csv"] = changed("batch.csv", "R1", "R9").at("batch.csv");
    files["pay.csv"] = changed("pay.csv", "12", "twelve").at("pay.csv");
    const auto all = troubles_of(files);
    REQUIRE(all.size() == 3);
    CHECK(all[0].file.ends_with("batch.csv"));
    CHECK(all[1].file.ends_with("pay.csv"));
    CHECK(all[2].file.ends_with("vat.csv"));
}

TEST_CASE("a folder that is not there") {
    const TempFolder temp;
    try {
        read_csv_folder(temp / "none");
        FAIL("was read");
    } catch (const ShopTrouble& trouble) {
        CHECK(trouble.trouble.id == TroubleId::no_such_folder);
    }
}

TEST_CASE("a folder that cannot be written is named, and nothing is left half-written") {
    const TempFolder temp;
    write_files(temp / "in", small_shop_files());
    const Shop shop = read_csv_folder(temp / "in");
    write_bytes(temp / "file", "x");
    CHECK_THROWS_AS(write_csv_folder(shop, temp / "file"), ShopTrouble);
    std::filesystem::create_directories(temp / "out" / "vat.csv");  // a folder stands where a file should
    CHECK_THROWS_AS(write_csv_folder(shop, temp / "out"), ShopTrouble);
    for (const auto& [name, text] : files_in(temp / "out")) CHECK(!name.ends_with(".part"));
}

TEST_CASE("a note whose record is gone goes out with the key, and comes back the same") {
    const TempFolder temp;
    write_files(temp / "in", small_shop_files());
    Shop shop = read_csv_folder(temp / "in");
    shop.all<Note>().front().about = AnyKey{"vat_step", 4711};
    write_csv_folder(shop, temp / "out");
    CHECK(bytes_of(temp / "out" / "note.csv").find(",vat_step/#4711,") != std::string::npos);
    CHECK(same_shop(read_csv_folder(temp / "out"), shop));
}

TEST_CASE("two facts under one code cannot be told apart, and are not written") {
    const TempFolder temp;
    write_files(temp / "in", small_shop_files());
    Shop shop = read_csv_folder(temp / "in");
    for (auto& person : shop.all<Person>()) person.code = "ada";
    CHECK_THROWS_AS(write_csv_folder(shop, temp / "out"), RecordsRefused);
    CHECK_FALSE(std::filesystem::exists(temp / "out"));
}
