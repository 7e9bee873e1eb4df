#include "gui/models/garden/sowing_form.h"

#include <doctest/doctest.h>

#include "domain/decisions/records.h"
#include "tests/gui/models/garden/garden_desk.h"

namespace dyestead::gui {

TEST_CASE("a sowing: plant, bed and day are enough, and the plant says what comes of it") {
    test::GardenDesk desk{day_of(2026, 4, 10)};
    Form form = sowing_form(desk.writing());
    CHECK(test::is_in_bounds(form));
    CHECK(form.text("sown") == "10 April 2026");
    CHECK_FALSE(form.cautions.empty());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("plant").trouble.empty());
    CHECK_FALSE(form.field("bed").trouble.empty());

    desk.type(form, {{"plant", desk.code(desk.indigo)}, {"bed", desk.code(desk.bed)}, {"area", "2 m2"}});
    // 100 days after 10 April is 19 July; 2 kg from each of 2 m2.
    CHECK(desk.keep(form) ==
          "Sown. First cut about the third week of July 2026; about 4 kg may be expected of it in all.");
    REQUIRE(desk.shop.all<Planting>().size() == 2);
    CHECK(desk.last<Planting>().plant == desk.indigo);
    CHECK(desk.last<Planting>().area == test::square_metres(2));
}

TEST_CASE("a plant and a bed typed by new names are put down with the sowing") {
    test::GardenDesk desk{day_of(2026, 4, 10)};
    Form form = sowing_form(desk.writing());
    desk.type(form, {{"plant", "Weld"}, {"bed", "By the wall"}});
    CHECK(form.field("plant").understood == "New here: Weld is put down with this entry.");
    CHECK(desk.keep(form).empty());
    CHECK(form.field("area").trouble == "How large is the new bed? Write it like 5 m2.");
    CHECK(desk.shop.all<Plant>().size() == 1);

    form.type("area", "2 m2", desk.writing());
    CHECK(desk.keep(form) ==
          "Sown. First cut about the second week of April 2027; about 1 kg may be expected of it in "
          "all.");
    REQUIRE(desk.shop.all<Plant>().size() == 2);
    CHECK(desk.last<Plant>().latin == "Reseda luteola");
    CHECK(desk.last<Bed>().area == test::square_metres(2));
    CHECK_FALSE(desk.last<Planting>().area.has_value());  // the whole of the new bed

    Form unknown = sowing_form(desk.writing());
    desk.type(unknown, {{"plant", "Hollyhock"}, {"bed", desk.code(desk.bed)}});
    CHECK(desk.keep(unknown).starts_with("Sown. What a square metre of it gives is not known yet"));
}

TEST_CASE("half of the packet goes into the bed") {
    test::GardenDesk desk{day_of(2026, 4, 10)};
    Form form = sowing_form(desk.writing());
    desk.type(form, {{"plant", "indigo"}, {"bed", "long bed"}});
    CHECK(form.field("plant").understood.empty());  // there by that name
    form.lines_of("used").rows = {{desk.code(desk.seed), "half", desk.code(desk.packet)}};
    form.look(form, desk.writing());
    CHECK(form.lines_of("used").notes.at(0) == "about 5 g indigo seed");
    CHECK_FALSE(desk.keep(form).empty());
    REQUIRE(desk.shop.all<PlantingUse>().size() == 1);
    CHECK(desk.shop.all<PlantingUse>()[0].amount.quantity == Quantity::grams(5));
    CHECK(desk.shop.all<PlantingUse>()[0].head == desk.last<Planting>().key);
    const LotState* packet = Records{desk.shop, desk.ledger}.state(desk.packet);
    REQUIRE(packet != nullptr);
    CHECK(packet->left == Quantity::grams(5).in_base());

    Form wrong = sowing_form(desk.writing());
    desk.type(wrong, {{"plant", "indigo"}, {"bed", "long bed"}});
    wrong.lines_of("used").rows = {{desk.code(desk.compost), "1 l", desk.code(desk.packet)}};
    CHECK(desk.keep(wrong).empty());
    CHECK(wrong.lines_of("used").notes.at(0).starts_with("That lot is of another material"));
}

TEST_CASE("a sowing is corrected in place") {
    test::GardenDesk desk;
    Form form = sowing_form(desk.writing(), desk.planting);
    CHECK(form.text("plant") == desk.code(desk.indigo));
    CHECK(form.text("sown") == "2 April 2026");
    desk.type(form, {{"sown", "4 April"}, {"expected", "~8 kg"}});
    CHECK_FALSE(desk.keep(form).empty());
    REQUIRE(desk.shop.all<Planting>().size() == 1);
    CHECK(desk.shop.find(desk.planting)->sown == day_of(2026, 4, 4));
    CHECK(desk.shop.find(desk.planting)->expected->mark == Mark::about);
}

TEST_CASE("a bed that stands already brings what had gone into it") {
    test::GardenDesk desk{day_of(2026, 1, 2)};
    Form form = standing_bed_form(desk.writing());
    CHECK(test::is_in_bounds(form));
    desk.type(form, {{"plant", "Madder"},
                     {"bed", "Madder bed"},
                     {"sown", "20 April 2027"},
                     {"area", "4 m2"},
                     {"cost", "18"},
                     {"time", "10 h"}});
    CHECK(desk.keep(form).empty());
    CHECK(form.field("sown").trouble == "It cannot have been sown after the day it stood already.");
    form.type("sown", "20 April 2024", desk.writing());
    CHECK(desk.keep(form) ==
          "It stands in the books with £18.00 and 10 h 00 min in it; what is cut from now on carries that.");
    REQUIRE(desk.shop.all<StandingBed>().size() == 1);
    const auto key = desk.last<StandingBed>().key;
    CHECK(desk.shop.find(desk.last<StandingBed>().planting)->sown == day_of(2024, 4, 20));

    Form correct = standing_bed_form(desk.writing(), key);
    correct.type("cost", "20", desk.writing());
    CHECK(desk.keep(correct).starts_with("It stands in the books with £20.00"));
    CHECK(desk.shop.all<Planting>().size() == 2);
}

}  // namespace dyestead::gui
