#include "gui/models/garden/cut_form.h"

#include <doctest/doctest.h>

#include "gui/models/garden/tending_form.h"
#include "tests/gui/models/garden/garden_desk.h"

namespace dyestead::gui {

TEST_CASE("a cut makes its own lot, of the plant's own harvest") {
    test::GardenDesk desk;
    auto& measure = desk.shop.all<OwnMeasure>().emplace_back();
    measure.key.number = 9'000;
    measure.name = "bucket";
    measure.amount = {Quantity::grams(1'100), Unit::g, Mark::about};
    Form form = cut_form(desk.writing(), std::nullopt);
    CHECK(test::is_in_bounds(form));
    CHECK(form.text("planting") == desk.code(desk.planting));
    CHECK(form.field("planting").origin == "the only one that grows");
    CHECK(form.text("what") == "Indigo, leaf");
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("amount").trouble.empty());

    form.type("amount", "2 buckets", desk.writing());
    CHECK(form.field("amount").understood == "about 2.2 kg");
    CHECK(desk.keep(form) == "Cut: about 2.2 kg Indigo, leaf. Vat it today: leaf loses dye by the hour.");
    REQUIRE(desk.shop.all<Harvest>().size() == 1);
    const Harvest& cut = desk.shop.all<Harvest>()[0];
    const Lot* lot = desk.shop.find(cut.lot);
    REQUIRE(lot != nullptr);
    CHECK(lot->code == "indigo-leaf-2026-07-03");
    CHECK(desk.shop.find(lot->material)->kind == MaterialKind::harvest);

    // The next one of the day: a lot of its own, and the same leaf.
    Form next = cut_form(desk.writing(), desk.planting);
    CHECK(next.text("what") == desk.code(lot->material));
    CHECK(next.field("what").origin == "from your last");
    desk.type(next, {{"amount", "800 g"}, {"last", std::string{kYes}}});
    CHECK_FALSE(desk.keep(next).empty());
    CHECK(desk.last<Lot>().code == "indigo-leaf-2026-07-03-2");
    REQUIRE(desk.shop.all<PlantingEnd>().size() == 1);
    CHECK(desk.shop.all<PlantingEnd>()[0].planting == desk.planting);
}

TEST_CASE("nothing is cut before it is sown, nor of what is bought") {
    test::GardenDesk desk;
    Form form = cut_form(desk.writing(), desk.planting);
    desk.type(form, {{"date", "1 April 2026"}, {"amount", "1 kg"}});
    CHECK(desk.keep(form).empty());
    CHECK(form.field("date").trouble == "It was sown on 2 April 2026 only; nothing can be cut of it before.");
    desk.type(form, {{"date", "3 July 2026"}, {"what", "indigo seed"}});
    CHECK(desk.keep(form).empty());
    CHECK(form.field("what").trouble.starts_with("indigo seed is bought, not harvested"));
    CHECK(desk.shop.all<Harvest>().empty());
}

TEST_CASE("a cut is corrected, its lot stays") {
    test::GardenDesk desk;
    Form form = cut_form(desk.writing(), desk.planting);
    form.type("amount", "2 kg", desk.writing());
    REQUIRE_FALSE(desk.keep(form).empty());
    const auto key = desk.last<Harvest>().key;
    const auto lot = desk.last<Harvest>().lot;
    Form correct = cut_form(desk.writing(), std::nullopt, key);
    CHECK(correct.text("amount") == "2 kg");
    desk.type(correct, {{"amount", "2.4 kg"}, {"what", "Indigo tops"}});
    REQUIRE_FALSE(desk.keep(correct).empty());
    CHECK(desk.shop.all<Harvest>().size() == 1);
    CHECK(desk.shop.find(key)->lot == lot);
    CHECK(desk.shop.find(desk.shop.find(lot)->material)->name == "Indigo tops");
    CHECK(desk.ledger.lots.back().left == 2'400'000);
}

TEST_CASE("time at one planting, with what it was given") {
    test::GardenDesk desk;
    Form form = tending_form(desk.writing(), desk.planting);
    CHECK(test::is_in_bounds(form));
    CHECK(desk.keep(form).empty());
    CHECK(form.field("time").trouble == "Say how long it took, what was given, or what was done.");
    form.type("time", "~2 h", desk.writing());
    form.lines_of("used").rows = {{desk.code(desk.compost), "20 l", ""}};
    CHECK(desk.keep(form) == "Indigo, Long bed: 2 h 00 min so far. All that grows now: 2 h 00 min.");
    REQUIRE(desk.shop.all<TendingUse>().size() == 1);
    const auto key = desk.last<Tending>().key;

    Form correct = tending_form(desk.writing(), std::nullopt, TendingAs::time, key);
    CHECK(correct.lines_of("used").rows.size() == 1);
    correct.type("time", "3 h", desk.writing());
    correct.lines_of("used").rows.clear();
    CHECK(desk.keep(correct) == "Indigo, Long bed: 3 h 00 min so far. All that grows now: 3 h 00 min.");
    CHECK(desk.shop.all<TendingUse>().empty());
}

TEST_CASE("time at several plantings is one sitting, shared by their area") {
    test::GardenDesk desk;
    auto& other = desk.builder.add<Planting>();
    other.sown = day_of(2026, 4, 5);
    other.plant = desk.indigo;
    other.bed = desk.bed;
    other.area = test::square_metres(1);
    const auto small = other.key;
    desk.open();
    Form form = tending_form(desk.writing(), desk.planting);
    form.lines_of("also_at").rows = {{desk.code(desk.planting)}};
    form.type("time", "2 h", desk.writing());
    CHECK(form.lines_of("also_at").notes.at(0) == "This planting is named already; take the line out.");
    CHECK(desk.keep(form).empty());
    form.lines_of("also_at").rows = {{desk.code(small)}};
    // 5 m2 and 1 m2: five sixths of two hours.
    CHECK(desk.keep(form) == "Indigo, Long bed: 1 h 40 min so far. All that grows now: 2 h 00 min.");
    CHECK(desk.shop.all<Sitting>().size() == 1);
    CHECK(desk.shop.all<SittingAt>().size() == 2);
    REQUIRE(desk.shop.all<Tending>().size() == 2);
    CHECK(desk.shop.all<Tending>()[0].code != desk.shop.all<Tending>()[1].code);
}

TEST_CASE("sown again is time and seed on the same planting") {
    test::GardenDesk desk;
    Form form = tending_form(desk.writing(), desk.planting, TendingAs::sown_again);
    CHECK(form.text("what") == "sown again");
    form.lines_of("used").rows = {{desk.code(desk.seed), "2 g", ""}};
    CHECK_FALSE(desk.keep(form).empty());
    CHECK(desk.shop.all<Planting>().size() == 1);
    CHECK(desk.last<TendingUse>().amount == test::grams(2));
}

}  // namespace dyestead::gui
