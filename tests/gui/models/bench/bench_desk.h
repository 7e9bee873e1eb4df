// bench_desk.h - a small soap bench to write at: one recipe of two oils in two colourings, and all it takes in hand.
#pragma once

#include "gui/models/form/field_values.h"
#include "tests/gui/models/form/desk.h"

namespace dyestead::test {

struct BenchDesk : Desk {
    Key<Person> maker;
    Key<Material> olive, coconut, lye, water, band, powder, plain, blue;
    Key<Colour> indigo;
    Key<Recipe> recipe;

    explicit BenchDesk(Day writing_for = day_of(2026, 7, 4)) : Desk{writing_for} {
        const Day first = day_of(2026, 1, 5);
        auto& about = builder.add<About>();
        about.name = "The Upper Room";
        about.currency = "GBP";
        maker = builder.person(first, Money::units(12));
        olive = builder.oil("olive oil", {188, 1});
        coconut = builder.oil("coconut oil", {257, 1});
        lye = builder.material("sodium hydroxide", Purpose::lye);
        water = builder.material("water", Purpose::water);
        band = builder.material("paper band", Purpose::wrapping, HeldAs::count);
        auto& colour = builder.add<Colour>();
        colour.name = "Blue";
        indigo = colour.key;
        powder = builder.made("blue powder", MaterialKind::pigment);
        builder.at(powder).colour = indigo;
        builder.delivery(first, olive, grams(5'000), Money::units(40));
        builder.delivery(first, coconut, grams(2'000), Money::units(14));
        builder.delivery(first, lye, grams(1'000), Money::units(5));
        builder.delivery(first, band, pieces(100), Money::hundredths(750));
        builder.delivery(first, water, grams(20'000), Money{});  // from the tap
        builder.already_here(first, powder, grams(20), Money::units(10));
        builder.all<AlreadyHere>().back().time = minutes(300);
    }
    // 600 g of olive and 400 g of coconut oil for 12 bars, plain or with 4 g of blue.
    void write_recipe() {
        plain = builder.made("plain bar", MaterialKind::bar);
        blue = builder.made("blue bar", MaterialKind::bar);
        recipe = builder.recipe(12);
        builder.at(recipe).name = "Everyday loaf";
        part(olive, 600);
        part(coconut, 400);
        auto& wrapping = builder.add<RecipeWrapping>(recipe);
        wrapping.material = band;
        wrapping.per_bar = pieces(1);
        builder.add<RecipeColouring>(recipe).bar = plain;
        auto& coloured = builder.add<RecipeColouring>(recipe);
        coloured.colouring = Colouring::own;
        coloured.colour = indigo;
        coloured.dose = grams(4);
        coloured.bar = blue;
    }
    void part(Key<Material> material, std::int64_t amount) {
        auto& part = builder.add<RecipePart>(recipe);
        part.material = material;
        part.amount = grams(amount);
    }
    // What a choice is chosen by.
    template <class Fact>
    static std::string code(Key<Fact> key) {
        return gui::KeyCodes{}.code_of(key);
    }
};

}  // namespace dyestead::test
