// garden.h - what was sown where, what time and feed went into it, what was cut?
#pragma once

#include "domain/facts/cupboard.h"

namespace dyestead {

struct Bed : HeadOf<Bed> {
    static constexpr std::string_view kTable = "bed";
    std::string name;
    Amount area;
};
template <>
inline constexpr auto kFields<Bed> = [](auto&& visit) {
    visit(field("name", &Bed::name));
    visit(field("area", &Bed::area));
};

struct Plant : HeadOf<Plant> {
    static constexpr std::string_view kTable = "plant";
    std::string name;
    std::string latin;
    std::string part;  // leaf, root, whole herb ...
    std::optional<Key<Colour>> colour;
    Amount low;              // harvest per square metre and crop: a bad year,
    Amount usual;            // a usual one,
    Amount high;             // a good one
    int crops = 1;           // in its life; cuts of one summer are one crop
    int years_to_first = 0;  // from sowing to the first crop
    Caution caution = Caution::none;
    std::optional<Ratio> strength_low;  // of its powder, grams of the colour's standard in one gram
    std::optional<Ratio> strength_usual;
    std::optional<Ratio> strength_high;
    std::optional<Amount> seed_rate;     // seed to a square metre, by weight or number
    std::optional<int> days_to_harvest;  // from sowing to the first cut of an annual
};
template <>
inline constexpr auto kFields<Plant> = [](auto&& visit) {
    visit(field("name", &Plant::name));
    visit(field("latin", &Plant::latin));
    visit(field("part", &Plant::part));
    visit(field("colour", &Plant::colour));
    visit(field("low", &Plant::low));
    visit(field("usual", &Plant::usual));
    visit(field("high", &Plant::high));
    visit(field("crops", &Plant::crops));
    visit(field("years_to_first", &Plant::years_to_first));
    visit(field("caution", &Plant::caution));
    visit(field("strength_low", &Plant::strength_low));
    visit(field("strength_usual", &Plant::strength_usual));
    visit(field("strength_high", &Plant::strength_high));
    visit(field("seed_rate", &Plant::seed_rate));
    visit(field("days_to_harvest", &Plant::days_to_harvest));
};

struct Planting : HeadOf<Planting> {
    static constexpr std::string_view kTable = "planting";
    static constexpr std::string_view kUses = "planting_use";
    Day sown;
    Key<Plant> plant;
    Key<Bed> bed;
    std::optional<Amount> area;      // blank: the whole bed
    std::optional<Amount> expected;  // harvest over its whole life; blank: the plant's usual
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Planting> = [](auto&& visit) {
    visit(field("sown", &Planting::sown));
    visit(field("plant", &Planting::plant));
    visit(field("bed", &Planting::bed));
    visit(field("area", &Planting::area));
    visit(field("expected", &Planting::expected));
    visit(field("note", &Planting::note));
};
using PlantingUse = UseIn<Planting>;

// A bed that stood before the books began, with what had gone into it.
struct StandingBed : HeadOf<StandingBed> {
    static constexpr std::string_view kTable = "standing_bed";
    Day date;
    Key<Planting> planting;
    std::optional<Money> cost;
    std::optional<Span> time;
    std::optional<Key<Person>> who;
};
template <>
inline constexpr auto kFields<StandingBed> = [](auto&& visit) {
    visit(field("date", &StandingBed::date));
    visit(field("planting", &StandingBed::planting));
    visit(field("cost", &StandingBed::cost));
    visit(field("time", &StandingBed::time));
    visit(field("who", &StandingBed::who));
};

// Time in the garden, and what was fed.
struct Tending : HeadOf<Tending> {
    static constexpr std::string_view kTable = "tending";
    static constexpr std::string_view kUses = "tending_use";
    Day date;
    Key<Planting> planting;
    std::optional<Span> time;
    std::optional<Key<Person>> who;
    std::optional<std::string> what;
};
template <>
inline constexpr auto kFields<Tending> = [](auto&& visit) {
    visit(field("date", &Tending::date));
    visit(field("planting", &Tending::planting));
    visit(field("time", &Tending::time));
    visit(field("who", &Tending::who));
    visit(field("what", &Tending::what));
};
using TendingUse = UseIn<Tending>;

// A revised expectation; changes only what is still to come.
struct ExpectedTotal : HeadOf<ExpectedTotal> {
    static constexpr std::string_view kTable = "expected_total";
    Day date;
    Key<Planting> planting;
    Amount amount;
};
template <>
inline constexpr auto kFields<ExpectedTotal> = [](auto&& visit) {
    visit(field("date", &ExpectedTotal::date));
    visit(field("planting", &ExpectedTotal::planting));
    visit(field("amount", &ExpectedTotal::amount));
};

struct Harvest : HeadOf<Harvest> {
    static constexpr std::string_view kTable = "harvest";
    Day date;
    Key<Planting> planting;
    Key<Lot> lot;
    Amount amount;
    std::optional<Span> time;
    std::optional<Key<Person>> who;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<Harvest> = [](auto&& visit) {
    visit(field("date", &Harvest::date));
    visit(field("planting", &Harvest::planting));
    visit(field("lot", &Harvest::lot));
    visit(field("amount", &Harvest::amount));
    visit(field("time", &Harvest::time));
    visit(field("who", &Harvest::who));
    visit(field("note", &Harvest::note));
};

// Seed kept from a bed: a by-product, worth what it would cost to buy.
struct SeedKept : HeadOf<SeedKept> {
    static constexpr std::string_view kTable = "seed_kept";
    Day date;
    Key<Planting> planting;
    Key<Lot> lot;
    Amount amount;
    std::optional<Span> time;
    std::optional<Key<Person>> who;
};
template <>
inline constexpr auto kFields<SeedKept> = [](auto&& visit) {
    visit(field("date", &SeedKept::date));
    visit(field("planting", &SeedKept::planting));
    visit(field("lot", &SeedKept::lot));
    visit(field("amount", &SeedKept::amount));
    visit(field("time", &SeedKept::time));
    visit(field("who", &SeedKept::who));
};

// Part of a bed lost: to frost, slugs, the neighbour's ball.
struct BedLost : HeadOf<BedLost> {
    static constexpr std::string_view kTable = "bed_lost";
    Day date;
    Key<Planting> planting;
    Amount area;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<BedLost> = [](auto&& visit) {
    visit(field("date", &BedLost::date));
    visit(field("planting", &BedLost::planting));
    visit(field("area", &BedLost::area));
    visit(field("note", &BedLost::note));
};

// How many of a lot of seed came up.
struct GerminationTry : HeadOf<GerminationTry> {
    static constexpr std::string_view kTable = "germination_try";
    Day date;
    Key<Lot> lot;
    int tried = 0;
    int came_up = 0;
};
template <>
inline constexpr auto kFields<GerminationTry> = [](auto&& visit) {
    visit(field("date", &GerminationTry::date));
    visit(field("lot", &GerminationTry::lot));
    visit(field("tried", &GerminationTry::tried));
    visit(field("came_up", &GerminationTry::came_up));
};

// The bed is done with: dug up, or failed.
struct PlantingEnd : HeadOf<PlantingEnd> {
    static constexpr std::string_view kTable = "planting_end";
    Day date;
    Key<Planting> planting;
    std::optional<std::string> note;
};
template <>
inline constexpr auto kFields<PlantingEnd> = [](auto&& visit) {
    visit(field("date", &PlantingEnd::date));
    visit(field("planting", &PlantingEnd::planting));
    visit(field("note", &PlantingEnd::note));
};

}  // namespace dyestead
