#include "reports/drawing_figures.h"

#include <doctest/doctest.h>

#include "tests/reports/write/sample_drawings.h"

using namespace dyestead;
using namespace dyestead::reports;

TEST_CASE("stacked bars as a list: one row for each part, and all together") {
    const StackedBars bars{
        .value_label = "GBP a bar",
        .series = {{"materials"}, {"our time", SeriesKind::time}},
        .bars = {{.label = "plain", .values = {1.5, 0.5}, .shown = {"1.50", "0.50"}, .total_shown = "2.00"}}};
    const Table table = figures_of(bars);
    REQUIRE(table.rows.size() == 3);
    CHECK(table.columns[1].heading == "plain");
    CHECK(table.rows[0][1].shown == "1.50");
    CHECK(table.rows[2][1].shown == "2.00");
    CHECK(table.emphasise_last_row);
}

TEST_CASE("a timeline as a list: bars and signs in the order of their days, named by themselves or by the legend") {
    const Table season = figures_of(sample_season());
    REQUIRE(season.rows.size() == 6);
    CHECK(season.columns.size() == 4);
    CHECK(season.rows[0][1].shown == "under glass");
    CHECK(season.rows[1][1].shown == "in the bed");
    CHECK(season.rows[2][0].shown == "Indigo, bed 1");
    CHECK(season.rows[2][1].shown == "first cut");
    CHECK(season.rows[2][2].shown == "3 July 2026");
    const Table shelf = figures_of(sample_shelf());
    REQUIRE(shelf.columns.size() == 5);
    CHECK(shelf.rows[0][1].shown == "cured");
    CHECK(shelf.rows[0][4].shown == "38 days to go");
    CHECK(figures_of(Timeline{.rows = {{.label = "empty bed"}}}).rows.size() == 1);
}

TEST_CASE("a curve as a list: each number of the axis once, each line a column, marks and band below") {
    const Table cure = figures_of(sample_cure());
    REQUIRE(cure.columns.size() == 4);
    CHECK(cure.columns[2].heading == "43 Plain");
    // 0, 7, 10, 14, 28, 30, 42, 55 and 60 days.
    REQUIRE(cure.rows.size() == 9);
    CHECK(cure.rows[0][1].number == 118);
    CHECK(cure.rows[1][1].number == 113.5);
    CHECK(cure.rows[1][2].no_value);
    CHECK(cure.rows[8][3].number == 100);
    const Table fair = figures_of(sample_fair());
    CHECK(fair.columns[1].heading == "GBP left after the stall");
    CHECK(fair.note == "At 17: 17 pays the stall. At 47: 47 pays you too. From 22 to 41: your last fairs.");
}
