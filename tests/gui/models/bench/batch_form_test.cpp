#include "gui/models/bench/batch_form.h"

#include <doctest/doctest.h>

#include "domain/decisions/shelf.h"
#include "reports/batch_cost.h"
#include "tests/gui/models/bench/bench_desk.h"

namespace dyestead::gui {

using test::BenchDesk;

namespace {

std::string text_of(const FormLines& lines, std::size_t row, std::string_view id) {
    for (std::size_t i = 0; i < lines.fields.size(); ++i)
        if (lines.fields[i].id == id) return lines.rows[row][i];
    return {};
}

}  // namespace

TEST_CASE("a batch is filled in from its recipe, lye worked out, and says what a bar comes to") {
    BenchDesk desk;
    desk.write_recipe();
    desk.open();
    Form form = batch_form(desk.writing());
    CHECK(form.text("date") == "4 July 2026");
    CHECK(form.lines_of("uses").rows.empty());  // no recipe is chosen yet
    form.type("recipe", BenchDesk::code(desk.recipe), desk.writing());
    CHECK(form.text("bar") == BenchDesk::code(desk.plain));
    const FormLines& uses = form.lines_of("uses");
    REQUIRE(uses.rows.size() == 4);  // two oils, lye, water; wrapping comes later
    CHECK(text_of(uses, 0, "amount") == "600 g");
    CHECK(text_of(uses, 1, "amount") == "400 g");
    // 0.95 (600 g 188 + 400 g 257) mg KOH, times 39.99677 / 56.1053 for sodium: 146.0 g.
    CHECK(text_of(uses, 2, "amount") == "146 g");
    CHECK(text_of(uses, 3, "amount") == "296.5 g");
    CHECK(form.summary.starts_with("12 bars."));
    CHECK(form.summary.find("as worked out") != std::string::npos);

    form.type("loaves", "2", desk.writing());
    CHECK(text_of(form.lines_of("uses"), 0, "amount") == "1200 g");
    form.type("loaves", "6", desk.writing());
    CHECK(form.summary.find("coconut oil runs short; there is enough for 5 loaves.") != std::string::npos);
    CHECK(form.lines_of("uses").notes[1] == "only 2 kg: short 400 g");
    form.type("loaves", "1", desk.writing());
    form.type("time", "1 h", desk.writing());

    // 4.80 + 2.80 + 0.73 for materials over 12 bars, and an hour at 12 beside it.
    const std::string said = desk.keep(form);
    CHECK(said.starts_with("12 bars, about \u00a30.69 each without your time, \u00a31.69 with; ready about 2 August"));
    REQUIRE(desk.shop.all<Batch>().size() == 1);
    CHECK(desk.shop.all<Batch>()[0].recipe == desk.recipe);
    CHECK(desk.shop.all<BatchUse>().size() == 4);
    REQUIRE(desk.shop.all<BatchTime>().size() == 1);
    CHECK(desk.shop.all<BatchTime>()[0].time.time == Minutes::whole(60));
}

TEST_CASE("lines that were changed stay as they are, and lye that is off is said and held") {
    BenchDesk desk;
    desk.write_recipe();
    desk.open();
    Form form = batch_form(desk.writing(), std::nullopt, desk.blue);
    CHECK(form.text("bar") == BenchDesk::code(desk.blue));
    FormLines& uses = form.lines_of("uses");
    REQUIRE(uses.rows.size() == 5);
    CHECK(text_of(uses, 4, "amount") == "4 g");  // of powder never tested
    uses.rows[2][1] = "155 g";
    form.look(form, desk.writing());
    CHECK(form.summary.find("Lye 155 g, worked out 146 g: 6.2 % over.") != std::string::npos);
    form.type("loaves", "2", desk.writing());
    CHECK(form.lines_of("uses").rows[2][1] == "155 g");
    form.type("loaves", "1", desk.writing());
    CHECK_FALSE(desk.keep(form).empty());
    CHECK(desk.shop.all<BatchUse>()[2].amount == test::grams(155));
}

TEST_CASE("a batch of no loaf, with a lot of something else, or more colour time than time, is not kept") {
    BenchDesk desk;
    desk.write_recipe();
    desk.open();
    Form form = batch_form(desk.writing(), std::nullopt, desk.plain);
    form.type("loaves", "0", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("loaves").trouble.empty());
    form.type("loaves", "1", desk.writing());
    form.lines_of("uses").rows[0][2] = BenchDesk::code(desk.shop.all<Lot>()[1].key);
    CHECK(desk.keep(form).empty());
    CHECK(form.lines_of("uses").notes[0].find("holds coconut oil") != std::string::npos);
    form.lines_of("uses").rows[0][2] = BenchDesk::code(desk.shop.all<Lot>()[0].key);
    form.type("time", "30 min", desk.writing());
    form.type("colour_time", "1 h", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("colour_time").trouble.empty());
    form.type("colour_time", "10 min", desk.writing());
    CHECK_FALSE(desk.keep(form).empty());
    REQUIRE(desk.shop.all<BatchTime>().size() == 2);
    CHECK(desk.shop.all<BatchTime>()[0].time == test::minutes(20));
    CHECK(desk.shop.all<BatchTime>()[1].task == BenchTask::colour);
}

TEST_CASE("a batch is corrected, and the bars cut from it become what it now is") {
    BenchDesk desk;
    desk.write_recipe();
    const auto batch = desk.builder.batch(day_of(2026, 6, 1), desk.recipe, desk.plain);
    desk.builder.uses<BatchUse>(batch, desk.olive, test::grams(600));
    desk.builder.cut(day_of(2026, 6, 2), batch, 12, 0, day_of(2026, 6, 30));
    desk.open();
    Form form = batch_form(desk.writing(), batch);
    CHECK(form.lines_of("uses").rows.size() == 1);
    CHECK(form.lines_of("times").rows.empty());
    form.type("bar", BenchDesk::code(desk.blue), desk.writing());
    form.lines_of("uses").rows[0][1] = "650 g";
    form.lines_of("times").rows.push_back({"pour", "45 min", ""});
    CHECK_FALSE(desk.keep(form).empty());
    REQUIRE(desk.shop.all<Batch>().size() == 1);
    CHECK(desk.shop.find(batch)->bar == desk.blue);
    CHECK(desk.shop.all<BatchUse>()[0].amount == test::grams(650));
    CHECK(desk.shop.all<BatchTime>()[0].time == test::minutes(45));
    CHECK(desk.shop.find(desk.shop.all<Cut>()[0].lot)->material == desk.blue);
}

TEST_CASE("a part is poured off with its share of the cost; not all of it, and not before it was poured") {
    BenchDesk desk;
    desk.write_recipe();
    const auto whole = desk.builder.batch(day_of(2026, 7, 3), desk.recipe, desk.plain);
    desk.builder.uses<BatchUse>(whole, desk.olive, test::grams(1'000));
    desk.open();
    Form form = split_form(desk.writing(), whole);
    CHECK(form.text("date") == "3 July 2026");
    form.type("share", "100 %", desk.writing());
    form.type("bar", BenchDesk::code(desk.blue), desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("share").trouble.empty());
    form.type("share", "1/4", desk.writing());
    form.type("date", "2 July 2026", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("date").trouble.empty());
    form.type("date", "3 July 2026", desk.writing());
    form.lines_of("uses").rows.push_back({BenchDesk::code(desk.powder), "2 g", ""});
    CHECK_FALSE(desk.keep(form).empty());
    REQUIRE(desk.shop.all<Batch>().size() == 2);
    const Batch& part = desk.shop.all<Batch>()[1];
    CHECK(part.recipe == desk.recipe);
    // A quarter of 8.00 of oil, and 2 g of powder at 0.50; the powder's five hours at 12 are 3.00 a gram.
    const auto cost = reports::bar_costs(desk.shop, desk.ledger, part.key);
    REQUIRE(cost);
    CHECK(cost->without_time == doctest::Approx(3.0 / 12));
    CHECK(cost->with_time == doctest::Approx(9.0 / 12));

    Form again = split_form(desk.writing(), std::nullopt, part.key);
    CHECK(again.text("share") == "1/4");
    again.type("share", "1/2", desk.writing());
    CHECK_FALSE(desk.keep(again).empty());
    CHECK(desk.shop.all<Batch>()[1].split_share == Ratio{1, 2});
}

}  // namespace dyestead::gui
