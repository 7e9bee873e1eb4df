#include "gui/models/today/today_place.h"

#include <doctest/doctest.h>

#include "gui/models/today/due.h"
#include "gui/models/today/work_form.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

namespace {

struct Busy : test::Desk {
    Busy() : Desk{day_of(2026, 7, 4)} {
        builder.add<About>().currency = "GBP";
        builder.person(day_of(2026, 1, 1), Money::units(10));
        const auto olive = builder.oil("Olive oil", {188, 1'000});
        builder.delivery(day_of(2026, 5, 1), olive, test::grams(3'000), Money::units(30));
        const auto bar = builder.made("Plain bar", MaterialKind::bar);
        const auto batch = builder.batch(day_of(2026, 6, 1), builder.recipe(12), bar);
        builder.uses<BatchUse>(batch, olive, test::grams(1'000));
        builder.cut(day_of(2026, 6, 2), batch, 12, 0, day_of(2026, 7, 6));
        auto& fair = builder.add<Fair>();
        fair.date = day_of(2026, 7, 18);
        fair.name = "Green fair";
        open();
    }
    Books books() const { return {shop, ledger}; }
};

}  // namespace

TEST_CASE("what wants doing, the first first, each with its place") {
    Busy desk;
    const auto all = due(desk.books());
    REQUIRE(all.size() == 2);
    CHECK(all[0].what == "12 bars out of cure: Plain bar");
    CHECK(all[0].day == day_of(2026, 7, 6));
    CHECK(all[0].place == Place::bench);
    CHECK(all[1].what == "Fair: Green fair");
    CHECK(all[1].place == Place::stall);
    const auto place = today_place();
    CHECK(place->waiting(desk.books()) == 1);  // the fair is further off than a week
    CHECK(place->state(desk.books()).starts_with("One thing to see to within a week."));
    CHECK(place->leads_to(desk.books(), 0, all[0].about) == Place::bench);
    CHECK_FALSE(place->leads_to(desk.books(), 1, all[0].about));
    CHECK(place->detail(desk.books(), 0, all[0].about).sentence.find("6 July 2026") != std::string::npos);
}

TEST_CASE("a clock left running at a vat is said, with since when, and leads to the vat") {
    test::Desk desk{day_of(2026, 7, 4)};
    auto& blue = desk.builder.add<Colour>();
    blue.name = "Blue";
    const Key<Colour> colour = blue.key;
    auto& vat = desk.builder.add<Vat>();
    vat.date = day_of(2026, 7, 3);
    vat.colour = colour;
    const Key<Vat> key = vat.key;
    desk.open();
    const Books books{desk.shop, desk.ledger};
    REQUIRE(due(books).size() == 1);
    CHECK(due(books).front().what == "Vat of 3 July 2026, blue, is standing");

    std::vector<RunningClock> clocks{{key, {day_of(2026, 7, 4), 9 * 60 + 10, 0}}};
    const auto place = today_place([&] { return clocks; });
    const auto said = [&] {
        const auto list = place->listings(books, "clock")[0];
        REQUIRE(list.rows.size() == 1);
        CHECK(list.rows.front() == FactRef{kKindOf<Vat>, key.number});
        return list.table.rows.front()[1].shown;
    };
    CHECK(said() == "Clock still running: vat of 3 July 2026, blue, since 09:10");
    const FactRef row{kKindOf<Vat>, key.number};
    CHECK(place->leads_to(books, 0, row) == Place::vat);
    CHECK(place->detail(books, 0, row).sentence.find("S stops the clock") != std::string::npos);

    clocks.front().since.day = day_of(2026, 7, 3);
    CHECK(said() == "Clock still running: vat of 3 July 2026, blue, since 3 July 2026 09:10");
    clocks.clear();
    CHECK(place->listings(books, "clock")[0].rows.empty());
}

TEST_CASE("time that belongs to nothing else") {
    Busy desk;
    Form form = work_form(desk.writing());
    CHECK_FALSE(form.text("who").empty());  // the only one there is
    form.type("what", "labels cut", desk.writing());
    form.type("time", "half an hour", desk.writing());
    CHECK(desk.keep(form) == "Time of this kind in 2026: 0.5 hours so far.");
    CHECK(today_place()->listings(desk.books(), "labels")[3].rows.size() == 1);
}

TEST_CASE("a draft holds all that stands in a form, lines too, and puts it back") {
    Busy desk;
    Form form = work_form(desk.writing());
    form.type("what", "posting", desk.writing());
    form.lines.push_back(
        {.id = "lines", .name = "Lines", .fields = {{.id = "a", .label = "a"}, {.id = "b", .label = "b"}}});
    form.lines.front().rows = {{"1", "2"}, {"3", ""}};
    const auto texts = form.texts();
    Form again = work_form(desk.writing());
    again.lines.push_back({.id = "lines", .name = "Lines", .fields = form.lines.front().fields});
    again.put_texts(texts, desk.writing());
    CHECK(again.text("what") == "posting");
    CHECK(again.lines.front().rows == form.lines.front().rows);
    CHECK(again.draft_code() == "work");
    // What a newer or older form called something else is left out.
    again.put_texts({{"nowhere", "x"}, {"lines/0/gone", "y"}, {"lines/x", "z"}}, desk.writing());
    CHECK(again.text("what") == "posting");
}

}  // namespace dyestead::gui
