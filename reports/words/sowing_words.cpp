#include "reports/words/sowing_words.h"

#include <cmath>

#include "domain/facts/material_amount.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

std::string whole(double number) {
    return shown_fixed(std::round(number), 0);
}

std::string plant_name(const Shop& shop, const ColourSowing& colour) {
    return colour.plant ? called(shop, *colour.plant) : std::string{};
}

std::string when_to_sow(const Shop& shop, const ColourSowing& colour) {
    const SowingDays& days = colour.days;
    if (!days.sow_by) return {};
    const auto plant = arg("plant", plant_name(shop, colour));
    const auto day = arg("day", shown_date(*days.sow_by));
    switch (days.from) {
        case SowDayFrom::nothing: return {};
        case SowDayFrom::last_sown:
            return say("{plant}: the next sowing falls on about {day}, the day of the year on which you sowed it last.",
                       plant, day);
        case SowDayFrom::usual_cut:
            return say("{plant}: sow by {day}, for a first cut when your first cuts usually came.", plant, day);
        case SowDayFrom::last_frost:
            return say("{plant}: no sowing of it is on record; sow from {day}, when your last frost is usually over.",
                       plant, day);
    }
    return {};
}

std::string last_day_to_sow(const SowingDays& days) {
    if (!days.last_chance) return {};
    const auto last = arg("last", shown_date(*days.last_chance));
    if (days.frost_closes)
        return say("What is sown after {last} gives no cut before your first frost, {frost} in a usual year.", last,
                   arg("frost", shown_date(*days.first_frost)));
    return say("What is sown after {last} gives no cut in a year that ends as early as your earliest did.", last);
}

std::string under_cover(const SowingDays& days) {
    if (!days.last_frost || !days.sow_by || *days.sow_by >= *days.last_frost) return {};
    return say(
        "That is before {day}, when your last frost is usually over: sow under cover and plant out from then on, or "
        "keep fleece at hand.",
        arg("day", shown_date(*days.last_frost)));
}

std::string days_to_come(const SowingDays& days) {
    if (!days.first_cut) return {};
    const auto cut = arg("cut", shown_date(*days.first_cut));
    if (!days.powder_dry) return say("Harvest from about {cut}.", cut);
    const auto dry = arg("dry", shown_date(*days.powder_dry));
    if (!days.bars_cured) return say("Harvest from about {cut}, the first powder dry about {dry}.", cut, dry);
    return say(
        "Harvest from about {cut}, the first powder dry about {dry}; bars poured with it that day are cured and ready "
        "for a stall on {cured}.",
        cut, dry, arg("cured", shown_date(*days.bars_cured)));
}

std::string standing_said(const Shop& shop, const ColourSowing& colour) {
    const Plant* plant = colour.plant ? shop.find(*colour.plant) : nullptr;
    if (plant == nullptr) return {};
    const StandingHarvest& standing = colour.standing;
    const auto name = arg("plant", plant->name);
    const auto year = arg("year", standing.year);
    if (standing.m2 <= 0) {
        if (plant->years_to_first <= 0) return {};
        return say_count(
            "{plant} is ripe only one year after sowing, and none that stands is ripe in {year}: the bars of "
            "that year must live on the powder there is.",
            "{plant} is ripe only {count} years after sowing, and none that stands is ripe in {year}: the "
            "bars of that year must live on the powder there is.",
            static_cast<std::uint64_t>(plant->years_to_first), name, year);
    }
    const auto ground = arg("ground", shown_m2(standing.m2));
    if (!standing.bars.usual) return say("{ground} of {plant} stand for the harvest of {year}.", ground, name, year);
    return say("{ground} of {plant} stand for the harvest of {year}, enough to colour this many bars: {bars}.", ground,
               name, year, arg("bars", shown_years(standing.bars, whole)));
}

std::string stock_said(const Shop& shop, const ColourSowing& colour) {
    if (!colour.bars_in_stock) return {};
    const auto name = arg("colour", colour_in_a_sentence(shop, colour.colour));
    const auto bars = arg("bars", whole(*colour.bars_in_stock));
    if (*colour.bars_in_stock < 0.5) return say("No powder of the {colour} is on the shelf.", name);
    if (!colour.stock_lasts)
        return say("The {colour} on the shelf is enough for {bars} bars: for years at that rate.", name, bars);
    return say("The {colour} on the shelf is enough for {bars} bars: at that rate until {day}.", name, bars,
               arg("day", shown_date(*colour.stock_lasts)));
}

std::string whether_to_sow(const Shop& shop, const ColourSowing& colour) {
    const auto name = arg("colour", colour_in_a_sentence(shop, colour.colour));
    if (colour.can_wait)
        return say(
            "So this sowing can be left out: with what stands, the {colour} there lasts until the powder of the "
            "sowing after it. The figures here are for sowing all the same; the powder there is not taken off.",
            name);
    if (colour.bars_without && *colour.bars_without >= 0.5)
        return say(
            "It runs out before the next powder is dry: about {bars} bars must do with bought colour, or without.",
            arg("bars", whole(*colour.bars_without)));
    return {};
}

std::string seed_said(const Shop& shop, const ColourSowing& colour) {
    if (!colour.seed || !colour.seed->of.usual) return {};
    const SeedNeed& seed = *colour.seed;
    const auto need = arg("need", shown_seed(seed.kind, *seed.of.usual));
    if (!seed.seed)
        return say(
            "Seed for a usual year: {need}. None of it was ever taken from stock, so what is there is not known.",
            need);
    const auto name = arg("seed", called(shop, *seed.seed));
    const Material* material = shop.find(*seed.seed);
    if (!seed.usual_as_held || material == nullptr)
        return say(
            "{seed} for a usual year: {need}. It is held in another measure than the plant's rate, and no sowing "
            "tells how one turns into the other.",
            name, need);
    const Kind held = kind_of(material->held_as);
    const std::string weighed = shown_seed(held, *seed.usual_as_held);
    const auto amount = arg("amount", held == seed.kind ? weighed
                                                        : say("{number}, or {weight} by what you used before",
                                                              arg("number", need.value), arg("weight", weighed)));
    const auto there = arg("there", shown_seed(held, seed.there));
    const auto buy = arg("buy", shown_seed(held, seed.to_buy.value_or(0)));
    if (seed.to_buy.value_or(0) <= 0)
        return say("{seed} for a usual year: {amount}. There is enough: {there} that are still good on that day.", name,
                   amount, there);
    if (seed.there <= 0)
        return say(
            "{seed} for a usual year: {amount}. None there is still good on that day: buy {buy}.", name, amount, buy);
    return say("{seed} for a usual year: {amount}. There are {there} that are still good on that day: buy {buy}.", name,
               amount, there, buy);
}

std::string seed_reckoned(const ColourSowing& colour) {
    if (!colour.seed) return {};
    const SeedNeed& seed = *colour.seed;
    if (seed.rate_from == SowingFrom::records)
        return tr("The plant states no seed to a square metre: reckoned with what you used before.");
    const auto coming = arg("coming", shown_percent(seed.coming.value_or(1)));
    const auto reserve = arg("reserve", shown_percent(seed.reserve - 1));
    const bool own_reserve = seed.reserve_from == SowingFrom::setting;
    if (seed.coming_from == SowingFrom::records && own_reserve)
        return say(
            "Reckoned with {coming} of the seed coming up, as your tries say, and {reserve} more for slugs and gaps, "
            "as "
            "you set it.",
            coming, reserve);
    if (seed.coming_from == SowingFrom::records)
        return say(
            "Reckoned with {coming} of the seed coming up, as your tries say, and {reserve} more for slugs and gaps "
            "(the program's own figure).",
            coming, reserve);
    if (seed.coming_from == SowingFrom::setting && own_reserve)
        return say(
            "Reckoned with {coming} of the seed coming up and {reserve} more for slugs and gaps, both as you set them. "
            "Try ten on wet paper first.",
            coming, reserve);
    if (seed.coming_from == SowingFrom::setting)
        return say(
            "Reckoned with {coming} of the seed coming up, as you set it, and {reserve} more for slugs and gaps (the "
            "program's own figure). Try ten on wet paper first.",
            coming, reserve);
    if (own_reserve)
        return say(
            "Reckoned with {coming} of the seed coming up, for no try is on record (the program's own figure), and "
            "{reserve} more for slugs and gaps, as you set it. Try ten on wet paper first.",
            coming, reserve);
    return say(
        "Reckoned with {coming} of the seed coming up, for no try is on record, and {reserve} more for slugs and "
        "gaps (both the program's own figures). Try ten on wet paper first.",
        coming, reserve);
}

}  // namespace

double two_digits(double number) {
    if (!(number > 0) || number >= 100) return std::round(number);
    const double step = std::pow(10, std::floor(std::log10(number)) - 1);
    return std::round(number / step) * step;
}

std::string shown_m2(double square_metres) {
    return say("{number} m²", arg("number", shown_number(two_digits(square_metres))));
}

std::string shown_seed(Kind kind, double base) {
    if (kind == Kind::count)
        return say_count(
            "{count} seed", "{count} seeds", static_cast<std::uint64_t>(std::max(0.0, std::ceil(base / 1e3))));
    return shown_quantity({kind, static_cast<std::int64_t>(std::llround(two_digits(base / 1e3) * 1e3))});
}

std::string shown_years(const YearRange& range, std::string (*shown)(double)) {
    if (!range.usual) return {};
    const auto usual = arg("usual", shown(*range.usual));
    if (!range.bad || !range.good) return say("{usual} in a usual year", usual);
    const auto bad = arg("bad", shown(*range.bad));
    const auto good = arg("good", shown(*range.good));
    if (bad.value == good.value) return say("{usual}, as in all years on record", usual);
    return say("{usual} in a usual year, {bad} in a bad one, {good} in a good one", usual, bad, good);
}

std::string origin(const SowingFigure& figure) {
    switch (figure.from) {
        case SowingFrom::nothing: return not_known();
        case SowingFrom::sales: return tr("sold in the last 12 months");
        case SowingFrom::asked: return tr("as you asked");
        case SowingFrom::recipe: return tr("your recipes");
        case SowingFrom::records:
            return figure.seasons > 0 ? say_count("your records, one season", "your records, {count} seasons",
                                                  static_cast<std::uint64_t>(figure.seasons))
                                      : tr("your records");
        case SowingFrom::method: return tr("your method's figure");
        case SowingFrom::plant: return tr("the plant's figure");
        case SowingFrom::setting: return tr("as you set it");
        case SowingFrom::supposed: return tr("supposed, not on record");
    }
    return {};
}

std::string gap_sentence(const Shop& shop, const ColourSowing& colour, SowingGap gap) {
    const auto name = arg("colour", colour_in_a_sentence(shop, colour.colour));
    const auto plant = arg("plant", plant_name(shop, colour));
    switch (gap) {
        case SowingGap::no_plant:
            return say(
                "No plant on record gives the {colour}: put it down in the garden, with the colour it gives.", name);
        case SowingGap::no_bars:
            return say(
                "No bar with your own {colour} was sold in the last 12 months, so nothing is wanted of it; ask for a "
                "number of bars to see what they take.",
                name);
        case SowingGap::no_dose:
            return say("No recipe says how much {colour} goes into a loaf: write the dose beside the recipe.", name);
        case SowingGap::no_yield:
            return say(
                "No vat of the {colour} is finished and no method says what a kilogram gives: how much harvest the "
                "bars take is not known. Work a vat, or write the method's figure down.",
                name);
        case SowingGap::nothing_came:
            return say("Every vat of the {colour} on record gave nothing, so no harvest would be enough.", name);
        case SowingGap::strength_untested:
            if (colour.strength.from == SowingFrom::plant)
                return say(
                    "The strength of your own {colour} is not tested: reckoned with the plant's figures. A shade test "
                    "would tell.",
                    name);
            return say(
                "The strength of your own {colour} is not tested: reckoned as strong as the bought one, in a bad year "
                "a third as strong. A shade test would tell.",
                name);
        case SowingGap::no_harvest_figure:
            return say(
                "{plant}: no harvest is on record and its card states none by weight for a square metre, so the "
                "ground is not known. Write down what a usual year gives.",
                plant);
        case SowingGap::nothing_grew:
            return say("{plant}: every planting on record gave nothing, so no ground would be enough.", plant);
        case SowingGap::no_seed_rate:
            return say(
                "{plant}: how much seed goes to a square metre is not on record, so seed is not reckoned.", plant);
        case SowingGap::seed_dead:
            return say(
                "{plant}: of the seed there none came up when tried, so it is not counted. Get fresh seed.", plant);
        case SowingGap::no_sowing_day:
            return say(
                "{plant}: no sowing and no harvest of it is on record, so the day to sow is not known. For an annual, "
                "saying in the settings when your last frost usually is would give one.",
                plant);
    }
    return {};
}

std::vector<std::string> sowing_sentences(const Shop& shop, const ColourSowing& colour) {
    std::vector<std::string> all;
    for (std::string each : {when_to_sow(shop, colour), under_cover(colour.days), last_day_to_sow(colour.days),
                             days_to_come(colour.days), standing_said(shop, colour), stock_said(shop, colour),
                             whether_to_sow(shop, colour), seed_said(shop, colour), seed_reckoned(colour)})
        if (!each.empty()) all.push_back(std::move(each));
    for (const SowingGap gap : colour.missing) all.push_back(gap_sentence(shop, colour, gap));
    if (colour.other_plants)
        all.push_back(say("Several plants give this colour; {plant} is reckoned with, of which most was harvested.",
                          arg("plant", plant_name(shop, colour))));
    return all;
}

}  // namespace dyestead::reports
