#include "gui/models/bench/bench_place.h"

#include <doctest/doctest.h>

#include <set>

#include "reports/batch_cost.h"
#include "tests/gui/models/bench/bench_desk.h"

namespace dyestead::gui {

using test::BenchDesk;

namespace {

// A blue batch that is cut, a plain one with too much lye, a third that stands.
struct Worked : BenchDesk {
    Key<Batch> coloured, heavy, standing;
    Key<Lot> blue_lot, heavy_lot;
    Worked() {
        write_recipe();
        coloured = pour(day_of(2026, 6, 1), blue, 146);
        builder.uses<BatchUse>(coloured, powder, test::grams(4));
        time(coloured, BenchTask::pour, 60);
        time(coloured, BenchTask::colour, 12);
        blue_lot = builder.cut(day_of(2026, 6, 2), coloured, 12, 0, day_of(2026, 7, 10));
        auto& wrapped = builder.add<Wrapping>();
        wrapped.date = day_of(2026, 7, 1);
        wrapped.lot = blue_lot;
        wrapped.bars = 12;
        const auto wrapping = wrapped.key;
        builder.uses<WrappingUse>(wrapping, band, test::pieces(12));
        heavy = pour(day_of(2026, 6, 10), plain, 150);
        heavy_lot = builder.cut(day_of(2026, 6, 11), heavy, 12, 1, day_of(2026, 7, 9));
        standing = pour(day_of(2026, 7, 3), plain, 146);
        auto& plan = builder.add<Plan>();
        plan.noted = day_of(2026, 7, 1);
        plan.date = day_of(2026, 7, 20);
        plan.recipe = recipe;
        plan.bar = blue;
        open();
    }
    Key<Batch> pour(Day date, Key<Material> bar, std::int64_t lye_grams) {
        const auto batch = builder.batch(date, recipe, bar);
        builder.uses<BatchUse>(batch, olive, test::grams(600));
        builder.uses<BatchUse>(batch, coconut, test::grams(400));
        builder.uses<BatchUse>(batch, lye, test::grams(lye_grams));
        return batch;
    }
    void time(Key<Batch> batch, BenchTask task, std::int64_t length) {
        auto& line = builder.add<BatchTime>(batch);
        line.task = task;
        line.time = test::minutes(length);
    }
    Books books() const { return {shop, ledger}; }
};

}  // namespace

TEST_CASE("the Bench says how it stands, and lists batches, recipes, the shelf, plans and what was wrapped") {
    const Worked desk;
    const auto bench = bench_place();
    CHECK(bench->state(desk.books()) == "12 bars in cure, the next 12 ready on 10 July 2026. One batch on hold.");
    CHECK(bench->waiting(desk.books()) == 2);
    const auto lists = bench->listings(desk.books(), {});
    REQUIRE(lists.size() == 5);
    for (const Listing& each : lists) {
        CHECK(each.table.columns.size() <= 6);
        CHECK(each.rows.size() == each.table.rows.size());
        CHECK_FALSE(each.empty.empty());
        for (const auto& row : each.table.rows) CHECK(row.size() == each.table.columns.size());
    }
    REQUIRE(lists[0].rows.size() == 3);
    CHECK(lists[0].table.rows[0][4].shown == "not cut");
    CHECK(lists[0].table.rows[1][4].shown == "on hold");
    CHECK(lists[0].table.rows[2][4].shown == "10 Jul 2026");
    // 8.33 of oils and lye, 2.00 of powder, 0.90 of bands over 12 bars; 72 min and 4/20 of 300 min at 12 an hour.
    CHECK(lists[0].table.rows[2][5].shown == "0.94 / 3.14");
    CHECK(lists[1].rows.size() == 1);
    REQUIRE(lists[2].rows.size() == 2);
    CHECK(lists[2].table.rows[0][3].shown == "on hold: lye 2.7 % over");
    CHECK(lists[2].table.rows[1][3].shown == "ready 10 July 2026");
    CHECK(lists[3].rows.size() == 1);
    CHECK(lists[4].rows.size() == 1);
    CHECK(bench->listings(desk.books(), "BLUE")[0].rows.size() == 1);
    CHECK(bench->listings(desk.books(), "green")[0].rows.empty());
}

TEST_CASE("a batch is told in a sentence, by lot and as a picture, and its parts add up to what the bars cost") {
    const Worked desk;
    const auto bench = bench_place();
    const Detail detail = bench->detail(desk.books(), 0, ref(*desk.shop.find(desk.coloured)));
    CHECK(detail.sentence ==
          "blue bar: one costs \u00a30.94 without your time and \u00a33.14 with it; 55 % of the time is the colour.");
    REQUIRE(detail.table);
    CHECK(detail.table->rows.size() == 6);  // two oils, lye, powder, time, all together
    CHECK(detail.table->rows.back()[4].shown == "36.73");

    const auto cost = reports::batch_cost(desk.books().shop, desk.books().ledger, desk.coloured);
    const auto booked = reports::bar_costs(desk.books().shop, desk.books().ledger, desk.coloured);
    REQUIRE(cost);
    REQUIRE(booked);
    CHECK(cost->without_time() == doctest::Approx(booked->without_time));
    CHECK(cost->with_time() == doctest::Approx(booked->with_time));
    const auto part = [&](reports::BarPart each) { return cost->parts[static_cast<std::size_t>(each)]; };
    CHECK(part(reports::BarPart::oils) == doctest::Approx(7.60 / 12));
    CHECK(part(reports::BarPart::lye_and_water) == doctest::Approx(0.73 / 12));
    CHECK(part(reports::BarPart::colour) == doctest::Approx(2.00 / 12));
    CHECK(part(reports::BarPart::wrapping) == doctest::Approx(0.90 / 12));
    CHECK(part(reports::BarPart::vat_time) == doctest::Approx(12.00 / 12));
    CHECK(part(reports::BarPart::bench_time) == doctest::Approx(14.40 / 12));

    const auto chart = bench->picture(desk.books(), 0, ref(*desk.shop.find(desk.coloured)));
    REQUIRE(chart);
    CHECK(chart->sentence == detail.sentence);
    const auto* bars = std::get_if<reports::StackedBars>(&chart->data);
    REQUIRE(bars);
    CHECK(bars->series.size() == 6);
    CHECK(bars->bars[0].values.size() == 6);
    CHECK_FALSE(bench->picture(desk.books(), 0, std::nullopt));
    // A recipe shows the batch that was made last.
    CHECK(bench->picture(desk.books(), 1, ref(*desk.shop.find(desk.recipe)))->sentence.find("so far") !=
          std::string::npos);
}

TEST_CASE("the curing shelf is a row for each lot in cure, and hatched where it is on hold") {
    const Worked desk;
    const auto chart = bench_place()->picture(desk.books(), 2, std::nullopt);
    REQUIRE(chart);
    CHECK(chart->sentence == "12 bars in cure, the next 12 ready on 10 July 2026. One batch on hold.");
    const auto* line = std::get_if<reports::Timeline>(&chart->data);
    REQUIRE(line);
    REQUIRE(line->rows.size() == 2);
    REQUIRE(line->rows[0].spans.size() == 1);
    CHECK(line->rows[0].spans[0].shade == reports::Shade::hatched);
    CHECK(line->rows[0].spans[0].word == "on hold: lye 2.7 % over");
    CHECK(line->rows[0].figure == "on hold");
    REQUIRE(line->rows[1].spans.size() == 2);
    CHECK(line->rows[1].spans[0].from == day_of(2026, 6, 2));
    CHECK(line->rows[1].spans[1].to == day_of(2026, 7, 9));
    CHECK(line->rows[1].figure == "6 days to go");
}

TEST_CASE("late postage on an oil is a cost of the oil, and a plain bar has no colour in it") {
    BenchDesk desk;
    desk.write_recipe();
    const auto batch = desk.builder.batch(day_of(2026, 6, 1), desk.recipe, desk.plain);
    desk.builder.uses<BatchUse>(batch, desk.olive, test::grams(600));
    auto& late = desk.builder.add<CostCorrection>();
    late.date = day_of(2026, 2, 1);
    late.delivery = desk.builder.all<Delivery>().front().key;
    late.amount = Money::units(10);
    desk.open();
    const auto cost = reports::batch_cost(desk.shop, desk.ledger, batch);
    REQUIRE(cost);
    // 5 kg for 50.00 by now.
    CHECK(cost->parts[static_cast<std::size_t>(reports::BarPart::oils)] == doctest::Approx(6.00 / 12));
    CHECK(cost->parts[static_cast<std::size_t>(reports::BarPart::colour)] == 0);
    CHECK(cost->without_time() == doctest::Approx(6.00 / 12));
}

TEST_CASE("held bars carry their caution, and a recipe its lye") {
    const Worked desk;
    const auto bench = bench_place();
    const Detail held = bench->detail(desk.books(), 2, ref(*desk.shop.find(desk.heavy_lot)));
    CHECK(held.sentence == "11 bars of plain bar: on hold: lye 2.7 % over.");
    CHECK(held.cautions.size() == 1);
    const Detail recipe = bench->detail(desk.books(), 1, ref(*desk.shop.find(desk.recipe)));
    CHECK(recipe.sentence.starts_with("One loaf: 1 kg of oils take 146 g"));
    REQUIRE(recipe.table);
    CHECK(recipe.table->rows.size() == 4);
    CHECK_FALSE(bench->cautions().empty());
    const Detail plan = bench->detail(desk.books(), 3, ref(desk.shop.all<Plan>()[0]));
    CHECK(plan.sentence == "All there is for it is in hand.");
}

TEST_CASE("every button begins a form, no two letters alike on a list, and every row is corrected by one") {
    Worked desk;
    const auto bench = bench_place();
    const auto lists = bench->listings(desk.books(), {});
    for (std::size_t list = 0; list < lists.size(); ++list) {
        std::set<char> letters;
        const auto doings = bench->doings(list);
        CHECK_FALSE(doings.empty());
        for (const Doing& each : doings) {
            CHECK(letters.insert(each.label[each.label.find('&') + 1]).second);
            if (each.paper) {
                CHECK_FALSE(each.paper(desk.books(), lists[list].rows.front()).blocks.empty());
                continue;
            }
            const auto form = each.begin(desk.writing(), lists[list].rows.front());
            REQUIRE(form);
        }
        for (const FactRef row : lists[list].rows) {
            const auto form = bench->correct(desk.writing(), row);
            REQUIRE(form);
            CHECK(form->fact.has_value());
            std::size_t needed = 0;
            for (const FormField& field : form->fields) needed += field.more ? 0 : 1;
            CHECK(needed <= 5);
        }
    }
    CHECK(bench->doings(lists.size()).empty());
    CHECK_FALSE(bench->correct(desk.writing(), ref(desk.shop.all<About>()[0])));
}

TEST_CASE("an empty Bench says what to do first") {
    BenchDesk desk;
    desk.shop = {};
    desk.take({});
    const auto bench = bench_place();
    CHECK(bench->state({desk.shop, desk.ledger}) == "No recipe is written down yet.");
    for (const Listing& each : bench->listings({desk.shop, desk.ledger}, {})) CHECK(each.rows.empty());
}

}  // namespace dyestead::gui
