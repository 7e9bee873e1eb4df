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
    std::optional<Amount> oils;            // of one loaf, where parts are stated as shares of them
    std::optional<Ratio> potassium_share;  // share of the lye (by saponifying power) that is potassium; blank: none
    std::optional<int> best_days;          // from the cut to the day bars are past their best
};
template <>
inline constexpr auto kFields<Recipe> = [](auto&& visit) {
    visit(field("name", &Recipe::name));
    visit(part("superfat", &Recipe::superfat));
    visit(part("lye_concentration", &Recipe::lye_concentration));
    visit(field("bars_per_loaf", &Recipe::bars_per_loaf));
    visit(field("declared_weight", &Recipe::declared_weight));
    visit(field("cure_days", &Recipe::cure_days));
    visit(field("oils", &Recipe::oils));
    visit(part("potassium_share", &Recipe::potassium_share));
    visit(field("best_days", &Recipe::best_days));
};

// Oils and scent for one loaf: an amount, or a share of the recipe's oils (recipe_amounts.h).
struct RecipePart : LineOf<RecipePart, Recipe> {
    static constexpr std::string_view kTable = "recipe_part";
    Key<Material> material;
    std::optional<Amount> amount;
    std::optional<Ratio> share;
};
template <>
inline constexpr auto kFields<RecipePart> = [](auto&& visit) {
    visit(field("material", &RecipePart::material));
    visit(field("amount", &RecipePart::amount));
    visit(part("share", &RecipePart::share));
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
    // Poured off from another batch: the share of all that batch took which went into this one.
    std::optional<Key<Batch>> split_from;
    std::optional<Ratio> split_share;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Batch> = [](auto&& visit) {
    visit(field("date", &Batch::date));
    visit(field("recipe", &Batch::recipe));
    visit(field("bar", &Batch::bar));
    visit(field("loaves", &Batch::loaves));
    visit(field("split_from", &Batch::split_from));
    visit(part("split_share", &Batch::split_share));
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
    std::optional<Day> best_before;
    std::optional<Amount> ends;  // end pieces, kept or thrown; they carry no cost
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
    visit(field("best_before", &Cut::best_before));
    visit(field("ends", &Cut::ends));
    visit(field("time", &Cut::time));
    visit(field("who", &Cut::who));
    visit(field("note", &Cut::note));
};

// Bars of one lot on the scale together; they go on losing weight.
struct Weighing : HeadOf<Weighing> {
    static constexpr std::string_view kTable = "weighing";
    Day date;
    Key<Lot> lot;
    int bars = 0;
    Amount total;
};
template <>
inline constexpr auto kFields<Weighing> = [](auto&& visit) {
    visit(field("date", &Weighing::date));
    visit(field("lot", &Weighing::lot));
    visit(field("bars", &Weighing::bars));
    visit(field("total", &Weighing::total));
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

// A lot that must not be sold or used: lye-heavy bars, a recalled oil. All that was made with it is
// held with it, until released.
struct Hold : HeadOf<Hold> {
    static constexpr std::string_view kTable = "hold";
    Day date;
    Key<Lot> lot;
    std::string why;
};
template <>
inline constexpr auto kFields<Hold> = [](auto&& visit) {
    visit(field("date", &Hold::date));
    visit(field("lot", &Hold::lot));
    visit(field("why", &Hold::why));
};

// The lot is no longer held, whatever it was held for: by a Hold, or by the program itself.
struct Release : HeadOf<Release> {
    static constexpr std::string_view kTable = "release";
    Day date;
    Key<Lot> lot;
    std::string why;
};
template <>
inline constexpr auto kFields<Release> = [](auto&& visit) {
    visit(field("date", &Release::date));
    visit(field("lot", &Release::lot));
    visit(field("why", &Release::why));
};

}  // namespace dyestead
