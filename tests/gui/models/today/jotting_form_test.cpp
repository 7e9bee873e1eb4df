#include "gui/models/today/jotting_form.h"

#include <doctest/doctest.h>

#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

TEST_CASE("a jotting needs words and a day, and the day is there already") {
    test::Desk desk{day_of(2026, 7, 4)};
    desk.open();
    Form form = jotting_form(desk.writing());
    CHECK(form.text("date") == "4 July 2026");
    CHECK(form.field("text").trouble.empty());  // a blank is no mistake until it is kept

    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("text").trouble.empty());
    CHECK(desk.shop.all<Jotting>().empty());

    form.type("text", "two jars of soda left", desk.writing());
    CHECK(form.field("text").trouble.empty());
    CHECK(desk.keep(form).starts_with("Jotted down"));
    REQUIRE(desk.shop.all<Jotting>().size() == 1);
    CHECK(desk.shop.all<Jotting>()[0].text == "two jars of soda left");
    CHECK(desk.shop.all<Jotting>()[0].date == day_of(2026, 7, 4));
}

TEST_CASE("a jotting is corrected in place, and seen to at once") {
    test::Desk desk{day_of(2026, 7, 4)};
    auto& jotting = desk.builder.add<Jotting>();
    jotting.date = day_of(2026, 7, 1);
    jotting.text = "weeding";
    const auto key = jotting.key;
    desk.open();
    Form form = jotting_form(desk.writing(), key);
    CHECK(form.text("text") == "weeding");
    form.type("text", "weeding, both of us", desk.writing());
    CHECK_FALSE(desk.keep(form).empty());
    REQUIRE(desk.shop.all<Jotting>().size() == 1);
    CHECK(desk.shop.find(key)->text == "weeding, both of us");

    const auto kept = jotting_done(desk.writing(), key);
    REQUIRE(kept);
    desk.take(applied(desk.shop, kept->change));
    CHECK(desk.shop.find(key)->done == day_of(2026, 7, 4));
}

}  // namespace dyestead::gui
