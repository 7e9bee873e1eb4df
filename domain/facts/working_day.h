// working_day.h - what was worked at, what is planned, what was jotted down, what wears out?
#pragma once

#include "domain/facts/bench.h"
#include "domain/facts/garden.h"
#include "domain/facts/settings.h"
#include "domain/facts/stall.h"
#include "domain/facts/vat.h"

namespace dyestead {

// Time at one or several things in one go; shared over them by leaf, area or bars.
struct Sitting : HeadOf<Sitting> {
    static constexpr std::string_view kTable = "sitting";
    Day date;
    std::optional<Key<Person>> who;
    Span time;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Sitting> = [](auto&& visit) {
    visit(field("date", &Sitting::date));
    visit(field("who", &Sitting::who));
    visit(field("time", &Sitting::time));
    visit(field("note", &Sitting::note));
};

// One of them: exactly one of these is named.
struct SittingAt : LineOf<SittingAt, Sitting> {
    static constexpr std::string_view kTable = "sitting_at";
    std::optional<Key<Tending>> tending;
    std::optional<Key<Harvest>> harvest;
    std::optional<Key<Vat>> vat;
    std::optional<Key<Drying>> drying;
    std::optional<Key<Batch>> batch;
    std::optional<Key<Cut>> cut;
    std::optional<Key<Wrapping>> wrapping;
    std::optional<Key<Fair>> fair;
    std::optional<Key<Sale>> sale;
};
template <>
inline constexpr auto kFields<SittingAt> = [](auto&& visit) {
    visit(field("tending", &SittingAt::tending));
    visit(field("harvest", &SittingAt::harvest));
    visit(field("vat", &SittingAt::vat));
    visit(field("drying", &SittingAt::drying));
    visit(field("batch", &SittingAt::batch));
    visit(field("cut", &SittingAt::cut));
    visit(field("wrapping", &SittingAt::wrapping));
    visit(field("fair", &SittingAt::fair));
    visit(field("sale", &SittingAt::sale));
};

// Hours that belong to nothing else: cleaning, paperwork, posting.
struct Work : HeadOf<Work> {
    static constexpr std::string_view kTable = "work";
    Day date;
    std::optional<Key<Person>> who;
    Span time;
    std::string what;
};
template <>
inline constexpr auto kFields<Work> = [](auto&& visit) {
    visit(field("date", &Work::date));
    visit(field("who", &Work::who));
    visit(field("time", &Work::time));
    visit(field("what", &Work::what));
};

// Ten words now, a proper record later.
struct Jotting : HeadOf<Jotting> {
    static constexpr std::string_view kTable = "jotting";
    Day date;
    std::string text;
    std::optional<Day> done;
};
template <>
inline constexpr auto kFields<Jotting> = [](auto&& visit) {
    visit(field("date", &Jotting::date));
    visit(field("text", &Jotting::text));
    visit(field("done", &Jotting::done));
};

// Loaves to be poured on a day; `noted`: when the maker made up their mind.
struct Plan : HeadOf<Plan> {
    static constexpr std::string_view kTable = "plan";
    Day noted;
    Day date;
    Key<Recipe> recipe;
    Key<Material> bar;
    int loaves = 1;
};
template <>
inline constexpr auto kFields<Plan> = [](auto&& visit) {
    visit(field("noted", &Plan::noted));
    visit(field("date", &Plan::date));
    visit(field("recipe", &Plan::recipe));
    visit(field("bar", &Plan::bar));
    visit(field("loaves", &Plan::loaves));
};

// A tool that wears out evenly over its years.
struct Equipment : HeadOf<Equipment> {
    static constexpr std::string_view kTable = "equipment";
    std::string name;
    Day bought;
    Money price;
    int years = 1;
    DyeOnly dye_only = DyeOnly::no;
    std::optional<Day> gone;  // broken, sold: what was left of it goes to the period that day
};
template <>
inline constexpr auto kFields<Equipment> = [](auto&& visit) {
    visit(field("name", &Equipment::name));
    visit(field("bought", &Equipment::bought));
    visit(field("price", &Equipment::price));
    visit(field("years", &Equipment::years));
    visit(field("dye_only", &Equipment::dye_only));
    visit(field("gone", &Equipment::gone));
};

// What the maker answered from memory to one of the ten questions.
struct Guess : HeadOf<Guess> {
    static constexpr std::string_view kTable = "guess";
    Day date;
    std::optional<Key<Colour>> colour;
    std::string question;
    std::string answer;
};
template <>
inline constexpr auto kFields<Guess> = [](auto&& visit) {
    visit(field("date", &Guess::date));
    visit(field("colour", &Guess::colour));
    visit(field("question", &Guess::question));
    visit(field("answer", &Guess::answer));
};

}  // namespace dyestead
