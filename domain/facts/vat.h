// vat.h - how was colour got out of the plant, how much came, and how strong is it?
#pragma once

#include "domain/facts/cupboard.h"
#include "domain/facts/method.h"
#include "domain/values/moment.h"
#include "domain/values/reading.h"

namespace dyestead {

// The colour is what is grown for and decided about. Bench minutes and money are what a bar of this
// colour takes beyond a plain bar.
struct Colour : HeadOf<Colour> {
    static constexpr std::string_view kTable = "colour";
    std::string name;
    std::optional<Key<Material>> bought_match;
    std::optional<Ratio> match_strength;  // grams of the standard in one gram of the match; blank: 1
    std::optional<Span> bought_minutes_per_bar;
    std::optional<Span> own_minutes_per_bar;
    std::optional<Money> own_cost_per_bar;
};
template <>
inline constexpr auto kFields<Colour> = [](auto&& visit) {
    visit(field("name", &Colour::name));
    visit(field("bought_match", &Colour::bought_match));
    visit(field("match_strength", &Colour::match_strength));
    visit(field("bought_minutes_per_bar", &Colour::bought_minutes_per_bar));
    visit(field("own_minutes_per_bar", &Colour::own_minutes_per_bar));
    visit(field("own_cost_per_bar", &Colour::own_cost_per_bar));
};

// What an assessor or the law says of the colour where the bars are sold.
enum class Answer : std::uint8_t { yes, no, waiting };
template <>
inline constexpr std::array<std::string_view, 3> kWords<Answer>{"yes", "no", "waiting"};

struct Allowed : HeadOf<Allowed> {
    static constexpr std::string_view kTable = "allowed";
    Day date;
    Key<Colour> colour;
    std::string where;
    std::string asked;
    Answer answer = Answer::waiting;
};
template <>
inline constexpr auto kFields<Allowed> = [](auto&& visit) {
    visit(field("date", &Allowed::date));
    visit(field("colour", &Allowed::colour));
    visit(field("where", &Allowed::where));
    visit(field("asked", &Allowed::asked));
    visit(field("answer", &Allowed::answer));
};

// One working of leaf, herb or root: the vat begun on a day.
struct Vat : HeadOf<Vat> {
    static constexpr std::string_view kTable = "vat";
    static constexpr std::string_view kUses = "vat_use";
    Day date;
    Key<Colour> colour;
    std::optional<Key<Method>> method;
    // Told at the end rather than step by step; shared over the method's steps.
    std::optional<Span> hands_on;
    std::optional<Span> waiting;  // attended
    std::optional<Key<Person>> who;
    std::optional<int> washes;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Vat> = [](auto&& visit) {
    visit(field("date", &Vat::date));
    visit(field("colour", &Vat::colour));
    visit(field("method", &Vat::method));
    visit(field("hands_on", &Vat::hands_on));
    visit(field("waiting", &Vat::waiting));
    visit(field("who", &Vat::who));
    visit(field("washes", &Vat::washes));
    visit(field("note", &Vat::note));
};
using VatUse = UseIn<Vat>;

// Heat given to a vat: metered energy, or so much water through a rise of temperature on a hob of
// some efficiency.
struct VatHeat : LineOf<VatHeat, Vat> {
    static constexpr std::string_view kTable = "vat_heat";
    HeatSource source = HeatSource::electricity;
    std::optional<Amount> energy;
    std::optional<Amount> water;
    std::optional<Temperature> heated_from;
    std::optional<Temperature> heated_to;
    std::optional<Ratio> efficiency;
};
template <>
inline constexpr auto kFields<VatHeat> = [](auto&& visit) {
    visit(field("source", &VatHeat::source));
    visit(field("energy", &VatHeat::energy));
    visit(field("water", &VatHeat::water));
    visit(field("heated_from", &VatHeat::heated_from));
    visit(field("heated_to", &VatHeat::heated_to));
    visit(part("efficiency", &VatHeat::efficiency));
};

struct VatStep : LineOf<VatStep, Vat> {
    static constexpr std::string_view kTable = "vat_step";
    std::string what;
    std::optional<Moment> begun;
    std::optional<Key<Person>> who;
    std::optional<Span> hands_on;
    std::optional<Span> waiting;
    Watch watch = Watch::unattended;
    std::optional<Temperature> temperature;
    std::optional<Acidity> acidity;
    std::optional<int> method_step;  // its position in the vat's method
};
template <>
inline constexpr auto kFields<VatStep> = [](auto&& visit) {
    visit(field("what", &VatStep::what));
    visit(field("begun", &VatStep::begun));
    visit(field("who", &VatStep::who));
    visit(field("hands_on", &VatStep::hands_on));
    visit(field("waiting", &VatStep::waiting));
    visit(field("watch", &VatStep::watch));
    visit(field("temperature", &VatStep::temperature));
    visit(field("acidity", &VatStep::acidity));
    visit(field("method_step", &VatStep::method_step));
};

// A paste still damp is weighed with its water and used up as it is.
enum class Dryness : std::uint8_t { dry, damp };
template <>
inline constexpr std::array<std::string_view, 2> kWords<Dryness>{"dry", "damp"};

// The vats on one plate, dried and weighed. No lot, or nothing weighed: they gave nothing.
struct Drying : HeadOf<Drying> {
    static constexpr std::string_view kTable = "drying";
    Day date;
    std::optional<Key<Lot>> lot;
    std::optional<Amount> amount;
    std::optional<Dryness> dryness;  // blank: dry
    std::optional<Amount> lost;      // seen and lost: blown away, stuck to the plate
    std::optional<Span> time;
    std::optional<Key<Person>> who;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Drying> = [](auto&& visit) {
    visit(field("date", &Drying::date));
    visit(field("lot", &Drying::lot));
    visit(field("amount", &Drying::amount));
    visit(field("dryness", &Drying::dryness));
    visit(field("lost", &Drying::lost));
    visit(field("time", &Drying::time));
    visit(field("who", &Drying::who));
    visit(field("note", &Drying::note));
};

struct DryingVat : LineOf<DryingVat, Drying> {
    static constexpr std::string_view kTable = "drying_vat";
    Key<Vat> vat;
};
template <>
inline constexpr auto kFields<DryingVat> = [](auto&& visit) { visit(field("vat", &DryingVat::vat)); };

// A further lot from the same plate. `worth`: what one gram of it counts for beside one gram of the
// drying's own lot in sharing the cost; for the same hue its strength, for another what its bars
// sell for at the same dose. Blank: the same.
struct DryingLot : LineOf<DryingLot, Drying> {
    static constexpr std::string_view kTable = "drying_lot";
    Key<Lot> lot;
    Amount amount;
    std::optional<Ratio> worth;
};
template <>
inline constexpr auto kFields<DryingLot> = [](auto&& visit) {
    visit(field("lot", &DryingLot::lot));
    visit(field("amount", &DryingLot::amount));
    visit(field("worth", &DryingLot::worth));
};

// How much of a powder gives the shade of one gram of what it is held against: 3 when three times
// as much is needed; blank when the two cannot be compared.
struct ShadeTest : HeadOf<ShadeTest> {
    static constexpr std::string_view kTable = "shade_test";
    Day date;
    Key<Lot> lot;
    Key<Material> against;
    std::optional<Ratio> needed_for_same;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<ShadeTest> = [](auto&& visit) {
    visit(field("date", &ShadeTest::date));
    visit(field("lot", &ShadeTest::lot));
    visit(field("against", &ShadeTest::against));
    visit(field("needed_for_same", &ShadeTest::needed_for_same));
    visit(field("note", &ShadeTest::note));
};

}  // namespace dyestead
