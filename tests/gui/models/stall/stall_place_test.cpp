#include "gui/models/stall/stall_place.h"

#include <doctest/doctest.h>

#include <set>

#include "domain/ledger/statements.h"
#include "gui/models/bench/batch_form.h"
#include "gui/models/bench/cut_form.h"
#include "gui/models/bench/hold_form.h"
#include "gui/models/bench/recipe_form.h"
#include "gui/models/stall/fair_form.h"
#include "gui/models/stall/price_forms.h"
#include "gui/models/stall/sale_form.h"
#include "tests/gui/models/stall/stall_desk.h"

namespace dyestead::gui {

using test::BenchDesk;
using test::StallDesk;

namespace {

struct Sold : StallDesk {
    Sold() {
        auto& next = builder.add<Fair>();
        next.name = "Green market";
        next.date = day_of(2026, 7, 18);
        next.fee = Money::units(30);
        next.noted = day_of(2026, 6, 30);
        const auto order = builder.sale(day_of(2026, 7, 2));
        builder.at(order).order_number = "1041";
        builder.sold(order, plain, 2, Money::hundredths(550));
        auto& out = builder.add<OutAtShop>();
        out.date = day_of(2026, 7, 1);
        out.where = "Corner room";
        out.bar = plain;
        out.bars = 5;
        out.price = Money::hundredths(550);
        const auto key = out.key;
        auto& settled = builder.add<OutSettled>();
        settled.date = day_of(2026, 7, 3);
        settled.out = key;
        settled.sold = 2;
        auto& back = builder.add<Returned>();
        back.date = day_of(2026, 7, 3);
        back.lot = plain_lot;
        back.bars = 1;
        back.refund = Money::hundredths(550);
        open();
    }
};

}  // namespace

TEST_CASE("the Stall says how it stands; held bars and bars in cure are never ready") {
    const Sold desk;
    const auto stall = stall_place();
    // 36 plain less 10 at the fair, 2 ordered, 5 out, 1 back; 24 blue less 6.
    CHECK(stall->state(desk.books()) ==
          "38 bars ready in 2 kinds. 12 bars on hold. Next fair: Green market, 18 July 2026.");
    CHECK(stall->waiting(desk.books()) == 0);
    const auto lists = stall->listings(desk.books(), {});
    REQUIRE(lists.size() == 4);
    for (const Listing& each : lists) {
        CHECK(each.table.columns.size() <= 6);
        CHECK(each.rows.size() == each.table.rows.size());
        CHECK_FALSE(each.empty.empty());
        for (const auto& row : each.table.rows) CHECK(row.size() == each.table.columns.size());
    }
    CHECK(lists[0].table.rows[0][1].shown == "18");  // blue
    CHECK(lists[0].table.rows[1][1].shown == "20");
    REQUIRE(lists[1].rows.size() == 2);
    CHECK(lists[1].table.rows[0][2].shown == "to come");
    CHECK(lists[1].table.rows[1][3].shown == "16 of 26");
    CHECK(lists[1].table.rows[1][4].shown == "94.00");
    CHECK(lists[1].table.rows[1][5].shown == "48.00");
    REQUIRE(lists[2].rows.size() == 4);
    CHECK(lists[2].table.rows[2][1].shown == "order 1041");
    CHECK(lists[2].table.rows[2][4].shown == "11.00");
    CHECK(lists[2].table.rows[2][5].shown == "10.00");
    CHECK(lists[2].table.rows[3][1].shown == "out at Corner room, 3 still there");
    CHECK(lists[3].rows.size() == 2);
    CHECK(stall->listings(desk.books(), "BLUE")[3].rows.size() == 1);
}

TEST_CASE("a fair that is over is told with its tin, one to come with what to take, a bar with what it leaves") {
    const Sold desk;
    const auto stall = stall_place();
    const Detail past = stall->detail(desk.books(), 1, ref(*desk.shop.find(desk.market)));
    CHECK(past.sentence.starts_with("16 of 26 bars sold for \u00a394.00; \u00a348.00 is left for your time"));
    CHECK(past.sentence.ends_with("The tin is right."));
    REQUIRE(past.table);
    CHECK(past.table->rows.size() == 2);
    CHECK(past.table->rows[0][3].shown == "10");
    CHECK(past.table->note.find("114.00 should be in it") != std::string::npos);
    const Detail next = stall->detail(desk.books(), 1, ref(desk.shop.all<Fair>()[1]));
    CHECK(next.sentence.find("pay for the stall") != std::string::npos);
    REQUIRE(next.table);
    CHECK(next.table->rows[1][4].shown == "20");
    CHECK(next.table->rows[1][5].shown == "12");
    // With no fair chosen the picture is of the next one.
    CHECK(stall->picture(desk.books(), 1, std::nullopt)->sentence == next.sentence);
    CHECK_FALSE(stall->picture(desk.books(), 0, std::nullopt));
    const Detail bar = stall->detail(desk.books(), 0, ref(*desk.shop.find(desk.plain)));
    CHECK(bar.sentence.starts_with("plain bar sells for \u00a35.50"));
    REQUIRE(bar.table);
    CHECK_FALSE(bar.table->rows.empty());
}

TEST_CASE("every button of the Stall begins a form, and every record is corrected by one") {
    Sold desk;
    const auto stall = stall_place();
    const auto lists = stall->listings(desk.books(), {});
    for (std::size_t list = 0; list < lists.size(); ++list) {
        std::set<char> letters;
        for (const Doing& each : stall->doings(list)) {
            CHECK(letters.insert(each.label[each.label.find('&') + 1]).second);
            if (each.paper)
                CHECK_FALSE(each.paper(desk.books(), lists[list].rows.back()).blocks.empty());
            else
                REQUIRE(each.begin(desk.writing(), lists[list].rows.back()));
        }
        for (const FactRef row : lists[list].rows) {
            const auto form = stall->correct(desk.writing(), row);
            if (list == 0) {
                CHECK_FALSE(form);  // a bar is corrected in its recipe, its price on the price list
                continue;
            }
            REQUIRE(form);
            CHECK(form->fact.has_value());
            std::size_t needed = 0;
            for (const FormField& field : form->fields) needed += field.more ? 0 : 1;
            CHECK(needed <= 5);
        }
    }
    CHECK(stall->doings(4).empty());
}

TEST_CASE("an empty Stall says what to do first") {
    BenchDesk desk;
    desk.take({});
    const auto stall = stall_place();
    CHECK(stall->state({desk.shop, desk.ledger}) == "No bars ready, and none in cure.");
    for (const Listing& each : stall->listings({desk.shop, desk.ledger}, {})) CHECK(each.rows.empty());
}

TEST_CASE("from the recipe to the order: every step written in its form, and the books add up") {
    BenchDesk desk{day_of(2026, 3, 1)};
    desk.open();
    const auto day = [&](Day date) {
        desk.day = date;
        desk.take(desk.shop);
    };
    Form recipe = recipe_form(desk.writing());
    recipe.type("name", "Everyday", desk.writing());
    recipe.type("bars", "12", desk.writing());
    recipe.type("weight", "100 g", desk.writing());
    recipe.lines_of("parts").rows = {{BenchDesk::code(desk.olive), "600 g"}, {BenchDesk::code(desk.coconut), "400 g"}};
    recipe.lines_of("wrapping").rows = {{BenchDesk::code(desk.band), "1"}};
    REQUIRE_FALSE(desk.keep(recipe).empty());
    const auto bar = desk.shop.all<RecipeColouring>()[0].bar;

    Form batch = batch_form(desk.writing(), std::nullopt, bar);
    batch.type("loaves", "2", desk.writing());
    batch.type("time", "2 h", desk.writing());
    REQUIRE_FALSE(desk.keep(batch).empty());
    day(day_of(2026, 3, 2));
    Form cut = cut_form(desk.writing(), desk.shop.all<Batch>()[0].key);
    // Two loaves of 8.33 and two hours at 12 over 24 bars.
    CHECK(desk.keep(cut) == "24 bars, \u00a30.69 each without your time and \u00a31.69 with it; ready 30 March 2026.");
    const auto lot = desk.shop.all<Cut>()[0].lot;

    Form hold = hold_form(desk.writing(), lot);
    hold.type("why", "soft in the middle", desk.writing());
    REQUIRE_FALSE(desk.keep(hold).empty());
    day(day_of(2026, 4, 1));
    const auto stall = stall_place();
    CHECK(stall->state({desk.shop, desk.ledger}) == "No bars ready, and none in cure. 24 bars on hold.");
    Form release = release_form(desk.writing(), lot);
    release.type("why", "hard by now, and mild", desk.writing());
    REQUIRE_FALSE(desk.keep(release).empty());
    CHECK(stall->state({desk.shop, desk.ledger}) == "24 bars ready.");
    Form wrap = wrap_form(desk.writing(), lot);
    CHECK(desk.keep(wrap).starts_with("24 bars wrapped; 76"));

    Form price = price_form(desk.writing(), bar);
    price.type("price", "5", desk.writing());
    REQUIRE_FALSE(desk.keep(price).empty());
    Form fair = fair_form(desk.writing());
    fair.type("name", "Spring market", desk.writing());
    fair.type("fee", "20", desk.writing());
    fair.lines_of("bars").rows = {{BenchDesk::code(bar), "20", "", "", ""}};
    REQUIRE_FALSE(desk.keep(fair).empty());
    CHECK(stall->waiting({desk.shop, desk.ledger}) == 1);
    Form back = count_back_form(desk.writing(), desk.shop.all<Fair>()[0].key);
    back.type("home", "8", desk.writing());
    back.type("cash", "100", desk.writing());
    back.type("float", "40", desk.writing());
    // 12 bars at 5.00 less the stall; each cost 16.66/24 and a band of 0.075.
    CHECK(desk.keep(back).starts_with("12 of 20 bars sold for \u00a360.00; \u00a330.77 is left for your time"));
    CHECK(stall->waiting({desk.shop, desk.ledger}) == 0);

    day(day_of(2026, 4, 5));
    Form order = order_form(desk.writing());
    order.type("number", "1", desk.writing());
    order.type("paid", "3", desk.writing());
    order.type("postage", "3.40", desk.writing());
    order.lines_of("bars").rows = {{BenchDesk::code(bar), "4", "", ""}};
    // 23.00 less 3.40 and 4 x 0.769; at the fair 20.00 x 40/60 less the same.
    CHECK(desk.keep(order) ==
          "This order earned \u00a316.52 after post, box and what the bars cost to make; at a fair it would have been "
          "\u00a310.26.");
    CHECK(stall->state({desk.shop, desk.ledger}) == "8 bars ready.");
    const CostPartition books = cost_partition(desk.shop, desk.ledger, desk.day);
    CHECK(books.in == books.out());
    CHECK(number(books.sold.full()) == doctest::Approx(16 * (8.33 / 12 + 1.00 + 0.075)).epsilon(1e-6));
    CHECK(desk.ledger.findings.empty());
}

}  // namespace dyestead::gui
