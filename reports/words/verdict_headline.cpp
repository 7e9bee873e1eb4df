#include <cmath>

#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/verdict_told.h"
#include "reports/words/verdict_words.h"

namespace dyestead::reports {
namespace {

std::string buy_in(const Told& it) {
    const auto colour = arg("colour", it.colour);
    if (!it.known) return say("Buy the {colour} in.", colour);
    if (it.ahead) {
        return say(
            "Buy the {colour} in: growing it brought {money} more than buying, too little for the {hours} it "
            "took.",
            colour, arg("money", it.money), arg("hours", it.hours));
    }
    return say("Buy the {colour} in: growing it took {hours} and left you {money} worse off than buying it.", colour,
               arg("hours", it.hours), arg("money", it.money));
}

std::string grow(const Told& it) {
    const auto colour = arg("colour", it.colour);
    if (!it.known) return say("Grow the {colour} again.", colour);
    if (it.ahead) {
        return say(
            "Grow the {colour} again: it took {hours} and left you {money} better off than buying it, and it "
            "would pay even at the same price.",
            colour, arg("hours", it.hours), arg("money", it.money));
    }
    return say("Grow the {colour} again: it cost {money} more than buying, less than the time it saved is worth.",
               colour, arg("money", it.money));
}

std::string story_only(const Shop& shop, const Verdict& verdict, const Told& it) {
    const std::string currency = currency_of(shop);
    const double needed = verdict.figures.premium_at_hurdle.value_or(0);
    const double given = verdict.figures.premium.value_or(0);
    return say(
        "Grow the {colour} for its story, not for its colour: it pays only while people give {needed} more for a "
        "bar, and they give you {given} more.",
        arg("colour", it.colour), arg("needed", shown_money(needed, currency)),
        arg("given", shown_money(given, currency)));
}

std::string too_close(const Shop& shop, const Verdict& verdict, const Told& it) {
    const double a_bar = verdict.figures.full_difference_at_hurdle.value_or(0);
    const auto colour = arg("colour", it.colour);
    const auto money = arg("money", shown_money(std::abs(a_bar), currency_of(shop)));
    // Not decided alike in every year: the sentence says which year says what.
    if (a_bar < 0) {
        return say(
            "Too close to call for the {colour}: over these years growing came out {money} a bar behind buying, "
            "but in your best year ahead.",
            colour, money);
    }
    return say(
        "Too close to call for the {colour}: over these years growing came out {money} a bar ahead of buying, "
        "but in your worst year it would not have paid at the same price.",
        colour, money);
}

std::string no_target(const Shop& shop, const Verdict& verdict, const Told& it) {
    const auto& bar = verdict.figures.home_less_bought;
    const auto colour = arg("colour", it.colour);
    const auto earned = bar ? bar->earned_per_hour() : std::nullopt;
    if (!earned) {
        return say(
            "The {colour} took the same time grown or bought in, so only the money decides, which the lines "
            "below show.",
            colour);
    }
    const auto money = arg("money", rough_money(std::abs(*earned), currency_of(shop)));
    if (bar->hours > 0 && bar->cash > 0)
        return say("Each extra hour spent growing the {colour} earned {money}: is that enough for you?", colour, money);
    if (bar->hours > 0)
        return say(
            "Each extra hour spent growing the {colour} cost you {money}: it loses whatever an hour is worth to "
            "you.",
            colour, money);
    if (bar->cash >= 0) return say("Growing the {colour} is ahead in money and in hours.", colour);
    return say("Growing the {colour} saves hours and costs {money} for each of them: is an hour worth that to you?",
               colour, money);
}

std::string leave_plain(const Shop& shop, const Verdict& verdict, const Told& it) {
    return say(
        "Leave it plain: with your time counted, a bar with grown {colour} leaves you {grown} less than a plain "
        "one, a bar with bought-in colour {bought} less.",
        arg("colour", it.colour), arg("grown", apart(shop, verdict, verdict.figures.home_less_plain)),
        arg("bought", apart(shop, verdict, verdict.figures.bought_less_plain)));
}

}  // namespace

Told told(const Shop& shop, const Verdict& verdict) {
    const SeasonFigures& season = verdict.figures.season;
    Told out;
    out.colour = colour_in_a_sentence(shop, verdict.colour);
    out.known = season.dye_hours && season.cash_difference;
    if (!out.known) return out;
    out.hours = shown_hours(*season.dye_hours);
    out.money = rough_money(std::abs(*season.cash_difference), currency_of(shop));
    out.ahead = *season.cash_difference >= 0;
    return out;
}

std::string apart(const Shop& shop, const Verdict& verdict, const std::optional<Difference>& difference) {
    const double hour = verdict.figures.extra_dye_hour.hurdle.value_or(0);
    return shown_money(difference ? std::abs(difference->full(hour)) : 0, currency_of(shop));
}

std::string verdict_headline(const Shop& shop, const Verdict& verdict) {
    const Told it = told(shop, verdict);
    if (verdict.ahead && verdict.ruling.word != RulingWord::too_soon) return ahead_headline(shop, verdict, it);
    switch (verdict.ruling.word) {
        case RulingWord::too_soon: return say("Too soon to say about the {colour}.", arg("colour", it.colour));
        case RulingWord::no_target: return no_target(shop, verdict, it);
        case RulingWord::leave_plain: return leave_plain(shop, verdict, it);
        case RulingWord::grow: return grow(it);
        case RulingWord::story_only: return story_only(shop, verdict, it);
        case RulingWord::buy_in: return buy_in(it);
        case RulingWord::too_close: return too_close(shop, verdict, it);
    }
    return {};
}

std::string verdict_title(const Shop& shop, const Verdict& verdict) {
    const auto colour = arg("colour", colour_in_a_sentence(shop, verdict.colour));
    if (verdict.from_memory) return say("From memory: is growing the {colour} worth the hours?", colour);
    if (!verdict.ahead) return say("Is growing the {colour} worth the hours?", colour);
    switch (*verdict.ahead) {
        case Stand::before_sowing: return say("Is it worth sowing the {colour} again?", colour);
        case Stand::leaf_standing: return say("Is it worth working the {colour} that stands?", colour);
        case Stand::pigment_dry: return say("What is the {colour} powder good for now?", colour);
    }
    return {};
}

}  // namespace dyestead::reports
