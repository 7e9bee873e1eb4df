#include "gui/models/columns_told.h"

#include <doctest/doctest.h>

namespace dyestead::gui {

TEST_CASE("a column in which nothing stands is left out, with its cells; the first and those with a value stay") {
    const reports::Cell none{.shown = "–", .number = std::nullopt, .no_value = true};
    const reports::Table table{.title = "As it was worked",
                               .columns = {{"step"}, {"begun at"}, {"hands-on"}, {"pH"}},
                               .rows = {{none, none, {.shown = "10 min"}, none}, {none, none, none, none}}};
    const reports::Table told = columns_told(table);
    REQUIRE(told.columns.size() == 2);
    CHECK(told.columns[0].heading == "step");
    CHECK(told.columns[1].heading == "hands-on");
    for (const auto& row : told.rows) REQUIRE(row.size() == 2);
    CHECK(told.rows[0][1].shown == "10 min");
    CHECK(columns_told({.title = "none yet", .columns = {{"a"}, {"b"}}, .rows = {}}).columns.size() == 2);
}

}  // namespace dyestead::gui
