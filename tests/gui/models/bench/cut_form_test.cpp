#include "gui/models/bench/cut_form.h"

#include <doctest/doctest.h>

#include "domain/decisions/shelf.h"
#include "gui/models/bench/hold_form.h"
#include "tests/gui/models/bench/bench_desk.h"

namespace dyestead::gui {

using test::BenchDesk;

namespace {

struct Poured : BenchDesk {
    Key<Batch> batch;
    explicit Poured(std::int64_t lye_grams = 146) {
        write_recipe();
        builder.at(recipe).best_days = 365;
        batch = builder.batch(day_of(2026, 7, 3), recipe, plain);
        builder.uses<BatchUse>(batch, olive, test::grams(600));
        builder.uses<BatchUse>(batch, coconut, test::grams(400));
        builder.uses<BatchUse>(batch, lye, test::grams(lye_grams));
        builder.uses<BatchUse>(batch, water, test::grams(296));
    }
    Key<Lot> cut() {
        const auto lot = builder.cut(day_of(2026, 7, 4), batch, 12, 0, day_of(2026, 8, 1));
        open();
        return lot;
    }
    Shelf on_shelf() { return shelf({shop, ledger}); }
};

}  // namespace

TEST_CASE("a batch is cut into the bars its recipe says, ready when it says, as a lot of its own") {
    Poured desk;
    desk.open();
    Form form = cut_form(desk.writing(), desk.batch);
    CHECK(form.text("bars") == "12");
    CHECK(form.field("bars").origin == "from the recipe");
    CHECK(form.text("cured") == "1 August 2026");
    CHECK(form.text("best_before") == "4 July 2027");
    form.type("date", "5 July", desk.writing());
    CHECK(form.text("cured") == "2 August 2026");
    form.type("rejected", "2", desk.writing());
    // 8.33 of materials over 10 good bars; 2 odd ones are usual nowhere, so their share is lost.
    CHECK(desk.keep(form).starts_with("10 bars, \u00a30.69 each"));
    REQUIRE(desk.shop.all<Cut>().size() == 1);
    const Lot* lot = desk.shop.find(desk.shop.all<Cut>()[0].lot);
    REQUIRE(lot != nullptr);
    CHECK(lot->material == desk.plain);
    CHECK(lot->code == "plain-bar-2026-07-05");
    const auto made = lot->key;  // the lot itself moves when the form is kept again

    Form again = cut_form(desk.writing(), std::nullopt, desk.shop.all<Cut>()[0].key);
    CHECK(again.text("bars") == "12");
    again.type("bars", "11", desk.writing());
    CHECK_FALSE(desk.keep(again).empty());
    CHECK(desk.shop.all<Cut>().size() == 1);
    CHECK(desk.shop.all<Cut>()[0].bars == 11);
    CHECK(desk.shop.all<Cut>()[0].lot == made);
}

TEST_CASE("more odd bars than bars, or a cut before the pouring, is not kept") {
    Poured desk;
    desk.open();
    Form form = cut_form(desk.writing(), desk.batch);
    form.type("rejected", "13", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("rejected").trouble.empty());
    form.type("rejected", "0", desk.writing());
    form.type("date", "1 July", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK(form.field("date").trouble.find("3 July 2026") != std::string::npos);
}

TEST_CASE("bars of a batch with too much lye are on hold from the cut on, and set free in so many words") {
    Poured desk{150};
    desk.open();
    Form form = cut_form(desk.writing(), desk.batch);
    CHECK(desk.keep(form).starts_with("12 bars, but on hold: lye 2.7 % over."));
    CHECK(desk.on_shelf().bars(BarState::held) == 12'000);

    Form free = release_form(desk.writing(), desk.shop.all<Cut>()[0].lot);
    CHECK(desk.keep(free).empty());  // a reason is needed
    CHECK_FALSE(free.field("why").trouble.empty());
    free.type("why", "weighed again: 146 g", desk.writing());
    CHECK(desk.keep(free) == "12 bars are free again: ready 1 August 2026.");
    CHECK(desk.on_shelf().bars(BarState::held) == 0);
    Form again = release_form(desk.writing(), std::nullopt, desk.shop.all<Release>()[0].key);
    again.type("date", "5 July", desk.writing());
    CHECK_FALSE(desk.keep(again).empty());
    CHECK(desk.on_shelf().bars(BarState::held) == 12'000);
}

TEST_CASE("a lot is put on hold by hand, and the hold is corrected") {
    Poured desk;
    const auto lot = desk.cut();
    Form form = hold_form(desk.writing(), lot);
    CHECK(desk.keep(form).empty());
    form.type("why", "white crust", desk.writing());
    CHECK(desk.keep(form).starts_with("12 bars are on hold now."));
    Form again = hold_form(desk.writing(), std::nullopt, desk.shop.all<Hold>()[0].key);
    CHECK(again.text("why") == "white crust");
    again.type("why", "white crust, wiped off and back", desk.writing());
    CHECK_FALSE(desk.keep(again).empty());
    REQUIRE(desk.shop.all<Hold>().size() == 1);
    CHECK(desk.shop.all<Hold>()[0].why == "white crust, wiped off and back");
    // An oil that was recalled holds what was made with it.
    Form oil = hold_form(desk.writing(), desk.shop.all<Lot>()[0].key);
    oil.type("why", "recalled", desk.writing());
    CHECK_FALSE(desk.keep(oil).empty());
    CHECK(desk.on_shelf().bars(BarState::held) == 12'000);
}

TEST_CASE("bars are weighed several at once") {
    Poured desk;
    const auto lot = desk.cut();
    Form form = weigh_form(desk.writing(), lot);
    form.type("weight", "318 g / 0", desk.writing());
    CHECK_FALSE(form.field("weight").trouble.empty());
    form.type("weight", "three", desk.writing());
    CHECK(desk.keep(form).empty());
    form.type("weight", "318 g / 3", desk.writing());
    CHECK(form.field("weight").understood == "106 g a bar");
    CHECK(desk.keep(form).starts_with("Now about 106 g a bar."));
    REQUIRE(desk.shop.all<Weighing>().size() == 1);
    CHECK(desk.shop.all<Weighing>()[0].bars == 3);
    CHECK(desk.shop.all<Weighing>()[0].total == test::grams(318));
    Form later = weigh_form(desk.writing(), lot);
    later.type("weight", "297 g / 3", desk.writing());
    const std::string told = desk.keep(later);
    CHECK(told.starts_with("Now about 99 g a bar: below the 100 g on the label."));
    CHECK(told.find("seldom by more than 4.5 g") != std::string::npos);
    Form again = weigh_form(desk.writing(), std::nullopt, desk.shop.all<Weighing>()[1].key);
    CHECK(again.text("weight") == "297 g / 3");
    again.type("weight", "303 g / 3", desk.writing());
    CHECK(desk.keep(again) == "Now about 101 g a bar, 4.7 % lighter than at the first weighing.");
}

TEST_CASE("bars are wrapped in what their recipe says, never more than were made") {
    Poured desk;
    const auto lot = desk.cut();
    Form form = wrap_form(desk.writing(), lot);
    CHECK(form.text("bars") == "12");
    REQUIRE(form.lines_of("uses").rows.size() == 1);
    CHECK(form.lines_of("uses").rows[0][1] == "12");
    form.type("bars", "13", desk.writing());
    CHECK(form.lines_of("uses").rows[0][1] == "13");
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("bars").trouble.empty());
    form.type("bars", "10", desk.writing());
    form.type("time", "30 min", desk.writing());
    CHECK(desk.keep(form) == "10 bars wrapped; 90 of paper band left, enough for 90 bars.");
    CHECK(not_wrapped(desk.writing().books, lot) == 2);
    Form again = wrap_form(desk.writing(), std::nullopt, desk.shop.all<Wrapping>()[0].key);
    again.type("bars", "12", desk.writing());
    again.lines_of("uses").rows[0][1] = "12";
    CHECK(desk.keep(again) == "12 bars wrapped; 88 of paper band left, enough for 88 bars.");
}

TEST_CASE("loaves are planned of a bar that a recipe makes, and what runs short is said") {
    Poured desk;
    desk.open();
    Form form = plan_form(desk.writing(), desk.blue);
    form.type("loaves", "0", desk.writing());
    form.type("date", "11 July", desk.writing());
    CHECK(desk.keep(form).empty());
    form.type("loaves", "9", desk.writing());
    CHECK(form.summary == "coconut oil runs short; there is enough for 4 loaves.");
    form.type("loaves", "1", desk.writing());
    CHECK(desk.keep(form) == "Planned; what is in hand is enough for 4 loaves.");
    REQUIRE(desk.shop.all<Plan>().size() == 1);
    CHECK(desk.shop.all<Plan>()[0].recipe == desk.recipe);
    CHECK(desk.shop.all<Plan>()[0].noted == desk.day);
    Form again = plan_form(desk.writing(), std::nullopt, desk.shop.all<Plan>()[0].key);
    again.type("loaves", "2", desk.writing());
    CHECK_FALSE(desk.keep(again).empty());
    CHECK(desk.shop.all<Plan>()[0].loaves == 2);
}

}  // namespace dyestead::gui
