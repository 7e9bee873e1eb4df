#include <doctest/doctest.h>

#include "gui/models/settings/settings_place.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::gui {

TEST_CASE("what the shop goes by stands kind by kind, and of each thing the newest first") {
    test::Desk desk{day_of(2026, 7, 4)};
    desk.builder.add<About>().currency = "GBP";
    const auto who = desk.builder.person(day_of(2024, 1, 1), Money::units(10));
    desk.builder.at(who).name = "Mia";
    for (const int year : {2026, 2025}) {
        auto& pay = desk.builder.add<Pay>();
        pay.person = who;
        pay.from = day_of(year, 1, 1);
        pay.per_hour = Money::units(year - 2014);
    }
    desk.open();
    const auto list = settings_place()->listings(desk.writing().books, "An hour of").front();
    REQUIRE(list.table.rows.size() == 3);
    CHECK(list.table.rows[0][1].shown == "is to bring £12.00");
    CHECK(list.table.rows[1][1].shown == "is to bring £11.00");
    CHECK(list.table.rows[2][1].shown == "is to bring £10.00");
    const auto all = settings_place()->listings(desk.writing().books, {}).front();
    CHECK(all.table.rows.front()[0].shown == "The shop itself");
}

}  // namespace dyestead::gui
