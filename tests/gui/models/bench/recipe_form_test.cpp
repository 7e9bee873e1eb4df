#include "gui/models/bench/recipe_form.h"

#include <doctest/doctest.h>

#include "tests/gui/models/bench/bench_desk.h"

namespace dyestead::gui {

using test::BenchDesk;

TEST_CASE("a recipe is written with its lye worked out, a new oil and a new bar") {
    BenchDesk desk;
    desk.open();
    Form form = recipe_form(desk.writing());
    CHECK(form.text("superfat") == "5 %");
    CHECK(form.field("superfat").origin == "usual");
    form.type("name", "Everyday loaf", desk.writing());
    form.type("bars", "12", desk.writing());
    form.type("weight", "100 g", desk.writing());
    FormLines& parts = form.lines_of("parts");
    parts.rows = {{BenchDesk::code(desk.olive), "600 g"}, {BenchDesk::code(desk.coconut), "400 g"}};
    form.look(form, desk.writing());
    CHECK(form.summary.starts_with("One loaf: 1 kg of oils take 146 g of sodium hydroxide and 296 g of water;"));
    parts.rows.push_back({"sunflower oil", "50 g"});
    form.lines_of("colourings").rows = {
        {"plain", "", "", "oat bar"}, {"own", BenchDesk::code(desk.indigo), "4 g", "sky bar"}};
    form.look(form, desk.writing());
    CHECK(parts.notes[2] == "new");
    CHECK(desk.keep(form).starts_with("sunflower oil: no saponification value is on record"));
    REQUIRE(desk.shop.all<Recipe>().size() == 1);
    CHECK(desk.shop.all<Recipe>()[0].code == "everyday-loaf");
    CHECK(desk.shop.all<RecipePart>().size() == 3);
    const Material* oil = desk.shop.find(desk.shop.all<RecipePart>()[2].material);
    REQUIRE(oil != nullptr);
    CHECK(oil->purpose == Purpose::oil);
    REQUIRE(desk.shop.all<RecipeColouring>().size() == 2);
    const Material* bar = desk.shop.find(desk.shop.all<RecipeColouring>()[1].bar);
    REQUIRE(bar != nullptr);
    CHECK(bar->name == "sky bar");
    CHECK(bar->kind == MaterialKind::bar);
    CHECK(bar->held_as == HeldAs::count);
}

TEST_CASE("a recipe in shares needs its oils, a coloured bar its colour") {
    BenchDesk desk;
    desk.open();
    Form form = recipe_form(desk.writing());
    form.type("name", "Olive loaf", desk.writing());
    form.type("bars", "10", desk.writing());
    form.type("weight", "100 g", desk.writing());
    form.lines_of("parts").rows = {{BenchDesk::code(desk.olive), "100 %"}};
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("oils").trouble.empty());
    form.type("oils", "1 kg", desk.writing());
    form.lines_of("colourings").rows = {{"own", "", "4 g", "sky bar"}};
    CHECK(desk.keep(form).empty());
    CHECK(form.lines_of("colourings").notes[0].starts_with("Choose which colour"));
    form.lines_of("colourings").rows.clear();
    CHECK_FALSE(desk.keep(form).empty());
    // Without a line it makes plain bars of its own name.
    REQUIRE(desk.shop.all<RecipeColouring>().size() == 1);
    CHECK(desk.shop.find(desk.shop.all<RecipeColouring>()[0].bar)->name == "Olive loaf");
    CHECK(desk.shop.all<RecipePart>()[0].share == Ratio{1, 1});
}

TEST_CASE("a recipe is corrected line by line, and keeps its bars") {
    BenchDesk desk;
    desk.write_recipe();
    desk.open();
    Form form = recipe_form(desk.writing(), desk.recipe);
    CHECK(form.lines_of("parts").rows.size() == 2);
    CHECK(form.lines_of("wrapping").rows.size() == 1);
    CHECK(form.lines_of("colourings").rows[1][3] == BenchDesk::code(desk.blue));
    form.type("bars", "0", desk.writing());
    CHECK(desk.keep(form).empty());
    CHECK_FALSE(form.field("bars").trouble.empty());
    form.type("bars", "14", desk.writing());
    form.lines_of("parts").rows[1] = {BenchDesk::code(desk.coconut), "350 g"};
    form.lines_of("wrapping").rows.clear();
    CHECK(desk.keep(form).starts_with("One loaf: 950 g of oils"));
    CHECK(desk.shop.find(desk.recipe)->bars_per_loaf == 14);
    CHECK(desk.shop.all<RecipePart>()[1].amount == test::grams(350));
    CHECK(desk.shop.all<RecipeWrapping>().empty());
    CHECK(desk.shop.all<RecipeColouring>()[1].bar == desk.blue);
    CHECK(desk.shop.all<Material>().size() == 8);
}

}  // namespace dyestead::gui
