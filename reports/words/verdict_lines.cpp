#include <algorithm>
#include <cmath>

#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/verdict_words.h"

namespace dyestead::reports {
namespace {

std::string money(std::optional<double> units, const std::string& currency) {
    return units ? shown_money(*units, currency) : not_known();
}

// What an hour has to bring, and why so much.
std::string hurdle_sentence(const Verdict& verdict, const std::string& currency) {
    const ExtraDyeHour& hour = verdict.figures.extra_dye_hour;
    if (!hour.hurdle) return {};
    const auto soap = arg("soap", money(hour.soap_hour, currency));
    const auto target = arg("target", money(verdict.hourly_target, currency));
    if (verdict.figures.hurdle_turns_it) {
        const bool pays_at_target = verdict.figures.full_difference_at_hurdle.value_or(0) < 0;
        return pays_at_target ? say("At your own target of {target} it would pay, but an hour more of soap without "
                                    "colour would bring {soap}, before running costs and stalls.",
                                    target, soap)
                              : say("At your own target of {target} it would not pay, but an hour more of soap without "
                                    "colour would bring {soap}, so the time it saves is worth more.",
                                    target, soap);
    }
    if (!verdict.hourly_target)
        return say("An hour more of soap without colour would bring {soap}, before running costs and stalls.", soap);
    if (!hour.soap_hour) return say("You want {target} for an hour.", target);
    return say(
        "You want {target} for an hour; an hour more of soap without colour would bring {soap}, before running "
        "costs and stalls.",
        target, soap);
}

// An hour of soap counts for less where bars come home anyway.
std::string came_home_sentence(const Verdict& verdict) {
    const bool came_home = std::ranges::find(verdict.findings, VerdictFindingCode::more_came_home,
                                             &VerdictFinding::code) != verdict.findings.end();
    if (!came_home || !verdict.figures.extra_dye_hour.soap_hour) return {};
    return say("But bars came home from most fairs, so more soap would not have sold.");
}

// Looking ahead: the hours still to do.
std::string hour_to_come_sentence(const Difference& bar, const std::string& currency) {
    const auto earned = bar.earned_per_hour();
    if (!earned)
        return say("Your hours: what is still to do takes the same time either way, so the money alone decides.");
    const auto amount = arg("money", shown_money(std::abs(*earned), currency));
    if (bar.hours > 0 && bar.cash > 0) return say("Your hours: each hour still to do would earn {money}.", amount);
    if (bar.hours > 0) {
        return say(
            "Your hours: each hour still to do would cost you {money}; growing would lose even if your time is worth "
            "nothing.",
            amount);
    }
    if (bar.cash >= 0) return say("Your hours: growing would be ahead in money and in hours.");
    return say(
        "Your hours: buying would cost {money} less for each hour it takes more, so growing is ahead when an hour is "
        "worth more than that.",
        amount);
}

std::string extra_hour_sentence(const Difference& bar, const std::string& currency) {
    const auto earned = bar.earned_per_hour();
    if (!earned) return say("Your hours: grown or bought in takes the same time, so the money alone decides.");
    const auto amount = arg("money", shown_money(std::abs(*earned), currency));
    if (bar.hours > 0 && bar.cash > 0) return say("Your hours: each extra hour at bed and vat earned {money}.", amount);
    if (bar.hours > 0) {
        return say(
            "Your hours: each extra hour at bed and vat cost you {money}; growing loses even if your time is worth "
            "nothing.",
            amount);
    }
    if (bar.cash >= 0) return say("Your hours: growing is ahead in money and in hours.");
    return say(
        "Your hours: buying costs {money} less for each hour it takes more, so growing is ahead when an hour is "
        "worth more than that.",
        amount);
}

std::string powder_sentence(const Shop& shop, const Verdict& verdict) {
    const StandsOn& on = verdict.stands_on;
    const auto grams = arg("grams", shown_grams(on.grams_dried));
    const auto& cost = verdict.figures.pigment.full_cost_per_gram;
    if (on.vats_finished == 0) return {};
    const auto vats = static_cast<std::uint64_t>(on.vats_finished);
    if (cost) {
        return say_count("One vat gave {grams}, about {cost} a gram with your time.",
                         "{count} vats gave {grams}, about {cost} a gram with your time.", vats, grams,
                         arg("cost", rough_money(*cost, currency_of(shop))));
    }
    return say_count("One vat gave {grams}.", "{count} vats gave {grams}.", vats, grams);
}

// Looking back it stands on what was, looking ahead on what was at today's prices.
std::string prices_sentence(const Verdict& verdict) {
    if (!verdict.ahead) return say("Prices, wages and tariffs are those in the books.");
    return say(
        "Amounts, minutes and failures are those on record; prices, wages and tariffs are those of {day}, without "
        "carriage.",
        arg("day", shown_date(verdict.window.last)));
}

std::string missing_sentence(MissingRecord missing) {
    switch (missing) {
        case MissingRecord::none: return {};
        case MissingRecord::dried_vat: return say("What is missing first is a vat, dried and its powder weighed.");
        case MissingRecord::shade_test:
            return say(
                "What is missing first is a shade test: a test bar beside one with bought-in colour, and how much "
                "of yours gives the same shade.");
        case MissingRecord::second_season: return say("What is missing first is a second season.");
        case MissingRecord::bought_match:
            return say("What is missing first is which bought-in colourant it is to be held against.");
        case MissingRecord::base_recipe:
            return say(
                "What is missing first is a loaf of a recipe with this colour, poured and cut, with how much "
                "colour goes into it.");
        case MissingRecord::price:
            return say("What is missing first is a price: of the bars, or of the bought-in colourant.");
    }
    return {};
}

}  // namespace

std::string each_bar_line(const Shop& shop, const Verdict& verdict) {
    const VerdictFigures& all = verdict.figures;
    if (!all.home.cash_margin_per_bar) return {};
    const std::string currency = currency_of(shop);
    const auto grown = arg("grown", money(all.home.cash_margin_per_bar, currency));
    const auto bought = arg("bought", money(all.bought.cash_margin_per_bar, currency));
    const auto plain = arg("plain", money(all.plain.cash_margin_per_bar, currency));
    if (!all.home.full_margin_per_bar) {
        return say(
            "Each bar: before your time a grown one leaves {grown}, a bought-in one {bought}, a plain one "
            "{plain}.",
            grown, bought, plain);
    }
    return say(
        "Each bar: before your time a grown one leaves {grown}, a bought-in one {bought}, a plain one {plain}; "
        "after your time {grown_full}, {bought_full} and {plain_full}.",
        grown, bought, plain, arg("grown_full", money(all.home.full_margin_per_bar, currency)),
        arg("bought_full", money(all.bought.full_margin_per_bar, currency)),
        arg("plain_full", money(all.plain.full_margin_per_bar, currency)));
}

std::string your_hours_line(const Shop& shop, const Verdict& verdict) {
    const auto& bar = verdict.figures.home_less_bought;
    if (!bar) return {};
    if (verdict.ahead == Stand::pigment_dry)
        return say("Your hours: those at bed and vat are spent either way, whatever becomes of the powder.");
    const std::string currency = currency_of(shop);
    std::string line = verdict.ahead ? hour_to_come_sentence(*bar, currency) : extra_hour_sentence(*bar, currency);
    for (const std::string& more : {hurdle_sentence(verdict, currency), came_home_sentence(verdict)})
        if (!more.empty()) line += " " + more;
    return line;
}

std::string stands_on_line(const Shop& shop, const Verdict& verdict) {
    const StandsOn& on = verdict.stands_on;
    const auto first = arg("first", shown_date(verdict.window.first));
    const auto last = arg("last", shown_date(verdict.window.last));
    if (on.vats_finished == 0) return say("No vat was dried between {first} and {last}.", first, last);
    std::string line = say_count("Stands on one vat dried between {first} and {last}.",
                                 "Stands on {count} vats dried between {first} and {last}.",
                                 static_cast<std::uint64_t>(on.vats_finished), first, last);
    line += " " + say_count("There is one harvest year on record.", "There are {count} harvest years on record.",
                            static_cast<std::uint64_t>(on.harvest_years));
    if (verdict.figures.pigment.strength && verdict.figures.model) {
        const Model& model = *verdict.figures.model;
        line +=
            " " + say("The strength comes from tests of {share} of the powder: the same shade takes {times} times as "
                      "much of yours as of the bought-in.",
                      arg("share", shown_percent(on.tested_share)),
                      arg("times", shown_number(model.bought_strength / model.strength)));
    }
    line += " " + prices_sentence(verdict);
    if (verdict.base_recipe) {
        line +=
            " " + say("A bar is taken from {bars} good bars of {recipe}, whatever their colour.",
                      arg("bars", shown_number(verdict.base_bars)), arg("recipe", called(shop, *verdict.base_recipe)));
    }
    return line;
}

std::vector<std::string> too_soon_lines(const Shop& shop, const Verdict& verdict) {
    std::vector<std::string> lines;
    if (verdict.ruling.word == RulingWord::too_soon) {
        if (auto known = powder_sentence(shop, verdict); !known.empty()) lines.push_back(std::move(known));
        if (auto missing = missing_sentence(verdict.ruling.missing); !missing.empty())
            lines.push_back(std::move(missing));
    }
    if (!verdict.if_weaker) return lines;
    const auto& strong = verdict.figures.season.cash_difference;
    const auto& weak = verdict.if_weaker->season.cash_difference;
    if (!strong || !weak) return lines;
    const std::string currency = currency_of(shop);
    const auto as_strong = arg("money", rough_money(std::abs(*strong), currency));
    const auto weaker = arg("money", rough_money(std::abs(*weak), currency));
    lines.push_back(
        *strong >= 0 ? say("If your powder is as strong as the bought-in one, growing left you {money} better off "
                           "than buying.",
                           as_strong)
                     : say("If your powder is as strong as the bought-in one, growing left you {money} worse off than "
                           "buying.",
                           as_strong));
    lines.push_back(*weak >= 0 ? say("If it is only a third as strong, growing left you {money} better off.", weaker)
                               : say("If it is only a third as strong, growing left you {money} worse off.", weaker));
    return lines;
}

}  // namespace dyestead::reports
