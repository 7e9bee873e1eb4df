// bench.h - which soap is made how, and what was poured, cut and wrapped?
#pragma once

#include "domain/facts/vat.h"

namespace dyestead {

// For one loaf.
struct Recipe : HeadOf<Recipe> {
    static constexpr std::string_view kTable = "recipe";
    std::string name;
    Ratio superfat;           // share of the oils left unsaponified
    Ratio lye_concentration;  // lye / (lye + water), by mass
    int bars_per_loaf = 0;
    Amount declared_weight;  // on the label of one bar
    int cure_days = 0;
};
template <>
inline constexpr auto kFields<Recipe> = [](auto&& visit) {
    visit(field("name", &Recipe::name));
    visit(field("superfat", &Recipe::superfat));
    visit(field("lye_concentration", &Recipe::lye_concentration));
    visit(field("bars_per_loaf", &Recipe::bars_per_loaf));
    visit(field("declared_weight", &Recipe::declared_weight));
    visit(field("cure_days", &Recipe::cure_days));
};

// Oils and scent for one loaf.
struct RecipePart : LineOf<RecipePart, Recipe> {
    static constexpr std::string_view kTable = "recipe_part";
    Key<Material> material;
    Amount amount;
};
template <>
inline constexpr auto kFields<RecipePart> = [](auto&& visit) {
    visit(field("material", &RecipePart::material));
    visit(field("amount", &RecipePart::amount));
};

struct RecipeWrapping : LineOf<RecipeWrapping, Recipe> {
    static constexpr std::string_view kTable = "recipe_wrapping";
    Key<Material> material;
    Amount per_bar;
};
template <>
inline constexpr auto kFields<RecipeWrapping> = [](auto&& visit) {
    visit(field("material", &RecipeWrapping::material));
    visit(field("per_bar", &RecipeWrapping::per_bar));
};

enum class Colouring : std::uint8_t { plain, bought, own };
template <>
inline constexpr std::array<std::string_view, 3> kWords<Colouring>{"plain", "bought", "own"};

// A recipe in one colouring makes one kind of bar. `dose` is stated in grams of the colour's
// standard for one loaf, so that weaker powder is used in a heavier dose for the same shade.
struct RecipeColouring : LineOf<RecipeColouring, Recipe> {
    static constexpr std::string_view kTable = "recipe_colouring";
    Colouring colouring = Colouring::plain;
    std::optional<Key<Colour>> colour;
    std::optional<Amount> dose;
    Key<Material> bar;
};
template <>
inline constexpr auto kFields<RecipeColouring> = [](auto&& visit) {
    visit(field("colouring", &RecipeColouring::colouring));
    visit(field("colour", &RecipeColouring::colour));
    visit(field("dose", &RecipeColouring::dose));
    visit(field("bar", &RecipeColouring::bar));
};

struct Batch : HeadOf<Batch> {
    static constexpr std::string_view kTable = "batch";
    static constexpr std::string_view kUses = "batch_use";
    Day date;
    Key<Recipe> recipe;
    Key<Material> bar;  // what it is to become
    int loaves = 1;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Batch> = [](auto&& visit) {
    visit(field("date", &Batch::date));
    visit(field("recipe", &Batch::recipe));
    visit(field("bar", &Batch::bar));
    visit(field("loaves", &Batch::loaves));
    visit(field("note", &Batch::note));
};
using BatchUse = UseIn<Batch>;

// What bench time was for; `colour` is what a plain batch would not have taken.
enum class BenchTask : std::uint8_t { pour, colour, other };
template <>
inline constexpr std::array<std::string_view, 3> kWords<BenchTask>{"pour", "colour", "other"};

struct BatchTime : LineOf<BatchTime, Batch> {
    static constexpr std::string_view kTable = "batch_time";
    BenchTask task = BenchTask::pour;
    std::optional<Key<Person>> who;
    Span time;
};
template <>
inline constexpr auto kFields<BatchTime> = [](auto&& visit) {
    visit(field("task", &BatchTime::task));
    visit(field("who", &BatchTime::who));
    visit(field("time", &BatchTime::time));
};

struct Cut : HeadOf<Cut> {
    static constexpr std::string_view kTable = "cut";
    Day date;
    Key<Batch> batch;
    Key<Lot> lot;
    int bars = 0;
    int rejected = 0;
    Day cured;  // saleable from this day
    std::optional<Span> time;
    std::optional<Key<Person>> who;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Cut> = [](auto&& visit) {
    visit(field("date", &Cut::date));
    visit(field("batch", &Cut::batch));
    visit(field("lot", &Cut::lot));
    visit(field("bars", &Cut::bars));
    visit(field("rejected", &Cut::rejected));
    visit(field("cured", &Cut::cured));
    visit(field("time", &Cut::time));
    visit(field("who", &Cut::who));
    visit(field("note", &Cut::note));
};

// Bars of one lot wrapped and labelled.
struct Wrapping : HeadOf<Wrapping> {
    static constexpr std::string_view kTable = "wrapping";
    static constexpr std::string_view kUses = "wrapping_use";
    Day date;
    Key<Lot> lot;
    int bars = 0;
    std::optional<Span> time;
    std::optional<Key<Person>> who;
};
template <>
inline constexpr auto kFields<Wrapping> = [](auto&& visit) {
    visit(field("date", &Wrapping::date));
    visit(field("lot", &Wrapping::lot));
    visit(field("bars", &Wrapping::bars));
    visit(field("time", &Wrapping::time));
    visit(field("who", &Wrapping::who));
};
using WrappingUse = UseIn<Wrapping>;

}  // namespace dyestead
