#include "gui/models/garden/planting_forms.h"

#include <doctest/doctest.h>

#include "gui/models/garden/cut_form.h"
#include "gui/models/garden/ground_forms.h"
#include "gui/models/garden/seed_forms.h"
#include "gui/models/garden/tending_form.h"
#include "tests/gui/models/garden/garden_desk.h"

namespace dyestead::gui {

namespace {

// Two hours and 20 l of compost at 0.10 in the bed.
void work(test::GardenDesk& desk) {
    Form form = tending_form(desk.writing(), desk.planting);
    form.type("time", "2 h", desk.writing());
    form.lines_of("used").rows = {{desk.code(desk.compost), "20 l", ""}};
    REQUIRE_FALSE(desk.keep(form).empty());
}

}  // namespace

TEST_CASE("a planting that failed loses what went into it") {
    test::GardenDesk desk;
    work(desk);
    Form form = planting_end_form(desk.writing(), desk.planting);
    CHECK(test::is_in_bounds(form));
    desk.type(form, {{"date", "1 April 2026"}, {"note", "slugs"}});
    CHECK(desk.keep(form).empty());
    CHECK(form.field("date").trouble == "It was sown on 2 April 2026 only; put a later day.");
    form.type("date", "3 July 2026", desk.writing());
    CHECK(desk.keep(form) == "Done with, and nothing was cut: £2.00 and 2 h 00 min are lost with it.");
    const auto key = desk.last<PlantingEnd>().key;
    Form correct = planting_end_form(desk.writing(), std::nullopt, key);
    correct.type("note", "slugs and frost", desk.writing());
    REQUIRE_FALSE(desk.keep(correct).empty());
    CHECK(desk.shop.find(key)->note == "slugs and frost");
}

TEST_CASE("a planting dug up after its cuts leaves the rest with the garden's year") {
    test::GardenDesk desk;
    work(desk);
    Form cut = cut_form(desk.writing(), desk.planting);
    cut.type("amount", "5 kg", desk.writing());
    REQUIRE_FALSE(desk.keep(cut).empty());
    Form form = planting_end_form(desk.writing(), desk.planting);
    // Half of the 10 kg expected was cut.
    CHECK(desk.keep(form) ==
          "Done with: 5 kg in all. £1.00 and 1 h 00 min in the bed that no cut had taken stay with "
          "the garden's year.");
}

TEST_CASE("part of a bed lost, no more than stands") {
    test::GardenDesk desk;
    work(desk);
    Form form = bed_lost_form(desk.writing(), desk.planting);
    CHECK(test::is_in_bounds(form));
    form.type("area", "6 m2", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK(form.field("area").trouble == "Only 5 m² of it stand; write no more than that.");
    form.type("area", "2 kg", desk.writing());
    CHECK_FALSE(form.field("area").trouble.empty());
    form.type("area", "1 m2", desk.writing());
    CHECK(desk.keep(form) == "1 m² lost, and £0.40 and 24 min with it; 4 m² still stand.");
    Form correct = bed_lost_form(desk.writing(), std::nullopt, desk.last<BedLost>().key);
    correct.type("area", "5 m2", desk.writing());
    CHECK(desk.keep(correct) == "5 m² lost, and £2.00 and 2 h 00 min with it; 0 m² still stand.");
}

TEST_CASE("a changed expectation moves only what is still to come") {
    test::GardenDesk desk;
    work(desk);
    Form cut = cut_form(desk.writing(), desk.planting);
    cut.type("amount", "5 kg", desk.writing());
    REQUIRE_FALSE(desk.keep(cut).empty());
    // On the same day it would count for this cut too.
    desk.day += Days{1};
    desk.take(desk.shop);
    Form form = expected_total_form(desk.writing(), desk.planting);
    CHECK(test::is_in_bounds(form));
    form.type("amount", "a lot", desk.writing());
    CHECK_FALSE(form.field("amount").trouble.empty());
    CHECK(desk.keep(form).empty());
    form.type("amount", "7 kg", desk.writing());
    CHECK(desk.keep(form) ==
          "2 kg still to come, after 5 kg cut; that carries £1.00 and 1 h 00 min. Earlier cuts keep their cost.");
    Form correct = expected_total_form(desk.writing(), std::nullopt, desk.last<ExpectedTotal>().key);
    correct.type("amount", "4 kg", desk.writing());
    CHECK(desk.keep(correct).starts_with("5 kg are cut already: the next cut carries all that is left in the bed"));
}

TEST_CASE("seed kept is worth what it would cost, and takes that off the harvest") {
    test::GardenDesk desk;
    work(desk);
    Form form = seed_kept_form(desk.writing(), desk.planting);
    CHECK(test::is_in_bounds(form));
    CHECK(form.text("seed") == desk.code(desk.seed));  // there by the plant's name
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("amount").trouble.empty());
    form.type("amount", "4 g", desk.writing());
    // 10 g cost 5.00.
    CHECK(desk.keep(form) == "4 g indigo seed kept, worth £2.00: so much less is carried by the harvest.");
    Form correct = seed_kept_form(desk.writing(), std::nullopt, desk.last<SeedKept>().key);
    correct.type("seed", "compost", desk.writing());
    CHECK(desk.keep(correct).empty());
    CHECK(correct.field("seed").trouble == "compost is no seed; give the seed a name of its own.");
    correct.type("seed", "Seed of the late sort", desk.writing());
    CHECK(desk.keep(correct).starts_with("4 g Seed of the late sort kept. No price of it is on record"));
    CHECK(desk.shop.all<SeedKept>().size() == 1);
}

TEST_CASE("a germination try says how much more to sow") {
    test::GardenDesk desk;
    Form form = germination_form(desk.writing());
    CHECK(test::is_in_bounds(form));
    CHECK(form.field("lot").origin == "the only seed there is");
    desk.type(form, {{"tried", "10"}, {"came_up", "11"}});
    CHECK(desk.keep(form).empty());
    CHECK(form.field("came_up").trouble == "No more can come up than the 10 laid out.");
    form.type("came_up", "7", desk.writing());
    CHECK(desk.keep(form) == "7 of 10 came up: sow about 1.4 times as much for the same stand.");
    Form correct = germination_form(desk.writing(), desk.last<GerminationTry>().key);
    correct.type("came_up", "0", desk.writing());
    CHECK(desk.keep(correct) == "None of 10 came up: do not count on this seed.");
}

TEST_CASE("a bed has a name of its own and a size") {
    test::GardenDesk desk;
    Form form = bed_form(desk.writing());
    CHECK(test::is_in_bounds(form));
    desk.type(form, {{"name", "long BED"}, {"area", "3 m2"}});
    CHECK(desk.keep(form).empty());
    CHECK(form.field("name").trouble == "There is a Long bed already; give this one another name.");
    form.type("name", "By the wall", desk.writing());
    CHECK(desk.keep(form) == "2 beds, 8 m2 in all.");
    CHECK(desk.last<Bed>().code == "by-the-wall");
    Form correct = bed_form(desk.writing(), desk.bed);
    correct.type("area", "6 m2", desk.writing());
    CHECK(desk.keep(correct) == "2 beds, 9 m2 in all.");
}

TEST_CASE("a plant is filled in from what is usual for it, or asked about") {
    test::GardenDesk desk;
    Form form = plant_form(desk.writing());
    CHECK(test::is_in_bounds(form));
    form.type("name", "Hollyhock", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("usual").trouble.empty());
    desk.type(form, {{"usual", "~200 g"}, {"low", "300 g"}});
    CHECK(desk.keep(form).empty());
    CHECK(form.field("usual").trouble.starts_with("A usual year lies between"));
    form.type("low", "100 g", desk.writing());
    CHECK(desk.keep(form) == "Hollyhock: 100 g to 200 g from a square metre, 200 g in a usual year.");

    Form madder = plant_form(desk.writing());
    madder.type("name", "Madder", desk.writing());
    CHECK(desk.keep(madder) == "Madder: 60 g to 180 g from a square metre, 150 g in a usual year.");
    CHECK(desk.last<Plant>().latin == "Rubia tinctorum");
    CHECK(desk.last<Plant>().years_to_first == 3);
    CHECK(desk.last<Plant>().caution == Caution::sensitising);
    Form correct = plant_form(desk.writing(), desk.indigo);
    CHECK(correct.text("usual") == "2000 g");
    correct.type("latin", "Persicaria tinctoria", desk.writing());
    REQUIRE_FALSE(desk.keep(correct).empty());
    CHECK(desk.shop.find(desk.indigo)->latin == "Persicaria tinctoria");
    CHECK(desk.shop.find(desk.indigo)->usual == test::grams(2'000));
}

}  // namespace dyestead::gui
