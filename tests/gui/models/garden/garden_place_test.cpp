#include "gui/models/garden/garden_place.h"

#include <doctest/doctest.h>

#include "gui/models/garden/cut_form.h"
#include "gui/models/garden/planting_forms.h"
#include "gui/models/garden/planting_story.h"
#include "gui/models/garden/tending_form.h"
#include "tests/gui/models/garden/garden_desk.h"

namespace dyestead::gui {

namespace {

void tend_and_cut(test::GardenDesk& desk) {
    Form time = tending_form(desk.writing(), desk.planting);
    time.type("time", "6 h", desk.writing());
    REQUIRE_FALSE(desk.keep(time).empty());
    Form cut = cut_form(desk.writing(), desk.planting);
    cut.type("amount", "~2.2 kg", desk.writing());
    REQUIRE_FALSE(desk.keep(cut).empty());
}

}  // namespace

TEST_CASE("the plantings, and how the one looked at stands") {
    test::GardenDesk desk;
    const auto garden = garden_place();
    CHECK(planting_sentence(desk.writing().books, desk.planting) ==
          "Sown 2 April 2026, 0 min so far, nothing cut yet; first cut about the second week of July 2026.");
    tend_and_cut(desk);
    const Books books = desk.writing().books;
    const auto lists = garden->listings(books, {});
    REQUIRE(lists.size() == 6);
    for (const Listing& list : lists) {
        CHECK(list.table.columns.size() <= 6);
        CHECK(list.rows.size() == list.table.rows.size());
        CHECK_FALSE(list.empty.empty());
    }
    REQUIRE(lists[0].rows.size() == 1);
    CHECK(lists[0].table.rows[0][2].shown == "5");
    CHECK(lists[1].table.rows[0][3].shown == "indigo-leaf-2026-07-03");
    CHECK(lists[0].table.rows[0][4].shown == "6 h 00 min");
    CHECK(lists[0].table.rows[0][5].shown == "about 2.2 kg");
    CHECK(garden->listings(books, "long")[0].rows.size() == 1);
    CHECK(garden->listings(books, "madder")[0].rows.empty());
    CHECK(garden->state(books) == "One bed planted, 5 m²; 6 hours so far this year.");

    const Detail detail = garden->detail(books, 0, lists[0].rows[0]);
    CHECK(detail.sentence == "Sown 2 April 2026, 6 h 00 min so far, about 2.2 kg cut; last cut on 3 July 2026.");
    REQUIRE(detail.table);
    REQUIRE(detail.table->rows.size() == 3);  // the newest first
    CHECK(detail.table->rows[2][1].shown == "sown");
}

TEST_CASE("a first cut that may be looked for waits") {
    test::GardenDesk early{day_of(2026, 7, 1)};
    CHECK(garden_place()->waiting(early.writing().books) == 0);
    test::GardenDesk desk{day_of(2026, 7, 20)};
    CHECK(garden_place()->waiting(desk.writing().books) == 1);
    tend_and_cut(desk);
    CHECK(garden_place()->waiting(desk.writing().books) == 0);
}

TEST_CASE("every doing begins its form, and every row can be corrected") {
    test::GardenDesk desk;
    tend_and_cut(desk);
    Form lost = bed_lost_form(desk.writing(), desk.planting);
    lost.type("area", "1 m2", desk.writing());
    REQUIRE_FALSE(desk.keep(lost).empty());
    const auto garden = garden_place();
    const auto lists = garden->listings(desk.writing().books, {});
    for (std::size_t i = 0; i < lists.size(); ++i) {
        CHECK_FALSE(garden->doings(i).empty());
        const auto selected = lists[i].rows.empty() ? std::nullopt : std::optional{lists[i].rows.front()};
        for (const Doing& doing : garden->doings(i)) {
            if (doing.to_selected && !selected) continue;
            if (doing.paper) {
                CHECK_FALSE(doing.paper(desk.writing().books, selected).blocks.empty());
                continue;
            }
            const auto form = doing.begin(desk.writing(), selected);
            REQUIRE(form);
            CHECK(test::is_in_bounds(*form));
        }
        for (const FactRef row : lists[i].rows) {
            const auto form = garden->correct(desk.writing(), row);
            REQUIRE(form);
            CHECK(form->fact == row);
        }
    }
}

TEST_CASE("time told over two plantings is shown at each of them by its share") {
    test::GardenDesk desk;
    auto& other = desk.builder.add<Planting>();
    other.sown = day_of(2026, 4, 5);
    other.plant = desk.indigo;
    other.bed = desk.bed;
    other.area = test::square_metres(1);
    const auto small = other.key;
    desk.open();
    Form form = tending_form(desk.writing(), desk.planting);
    form.lines_of("also_at").rows = {{desk.code(small)}};
    form.type("time", "2 h", desk.writing());
    REQUIRE_FALSE(desk.keep(form).empty());
    const Listing time = garden_place()->listings(desk.writing().books, {})[2];
    REQUIRE(time.table.rows.size() == 2);
    const double first = time.table.rows[0][3].number.value_or(0);
    const double second = time.table.rows[1][3].number.value_or(0);
    CHECK(std::max(first, second) == 100.0);  // 5 m2 of 6
    CHECK(std::min(first, second) == 20.0);
}

TEST_CASE("the season line: from sowing to the end, with its cuts") {
    test::GardenDesk desk;
    SeasonLines lines = season_rows(desk.writing().books);
    REQUIRE(lines.rows.size() == 1);
    CHECK(lines.today == day_of(2026, 7, 3));
    CHECK(lines.rows[0].from == day_of(2026, 4, 2));
    CHECK_FALSE(lines.rows[0].to);
    CHECK(lines.rows[0].cut_about == day_of(2026, 7, 11));  // 100 days on
    const auto chart = garden_place()->picture(desk.writing().books, 0, std::nullopt);
    REQUIRE(chart);
    CHECK(chart->sentence ==
          "One planting stands. The next first cut: Indigo, Long bed, about the second week of July "
          "2026.");

    tend_and_cut(desk);
    Form end = planting_end_form(desk.writing(), desk.planting);
    REQUIRE_FALSE(desk.keep(end).empty());
    lines = season_rows(desk.writing().books);
    REQUIRE(lines.rows.size() == 1);
    CHECK(lines.rows[0].to == day_of(2026, 7, 3));
    CHECK(lines.rows[0].cuts == std::vector{day_of(2026, 7, 3)});
    CHECK_FALSE(lines.rows[0].cut_about);

    desk.day = day_of(2027, 3, 1);
    desk.take(desk.shop);
    CHECK(season_rows(desk.writing().books).rows.empty());
}

}  // namespace dyestead::gui
