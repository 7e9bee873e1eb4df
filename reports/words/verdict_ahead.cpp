// What the verdict says of the next season, from where the maker stands.
#include <cmath>

#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"
#include "reports/words/verdict_told.h"

namespace dyestead::reports {
namespace {

Arg a_bar(const Shop& shop, const Verdict& verdict) {
    return arg("money", apart(shop, verdict, verdict.figures.home_less_bought));
}

Arg colour_of(const Told& it) {
    return arg("colour", it.colour);
}

// What an hour still to do would earn: "about £16".
Arg earned(const Shop& shop, double an_hour) {
    return arg("earned", rough_money(std::abs(an_hour), currency_of(shop)));
}

std::string story(const Shop& shop, const Verdict& verdict, const Told& it, std::string_view sentence) {
    const std::string currency = currency_of(shop);
    return say(sentence, colour_of(it),
               arg("needed", shown_money(verdict.figures.premium_at_hurdle.value_or(0), currency)),
               arg("given", shown_money(verdict.figures.premium.value_or(0), currency)));
}

std::string plain(const Shop& shop, const Verdict& verdict, const Told& it) {
    const auto grown = arg("grown", apart(shop, verdict, verdict.figures.home_less_plain));
    const auto bought = arg("bought", apart(shop, verdict, verdict.figures.bought_less_plain));
    switch (*verdict.ahead) {
        case Stand::before_sowing:
            return say(
                "Sow no {colour} and leave the bars plain: at today's prices, with your time counted, a bar with grown "
                "colour would leave you {grown} less than a plain one, a bar with bought-in colour {bought} less.",
                colour_of(it), grown, bought);
        case Stand::leaf_standing:
            return say(
                "Leave the bars plain: growing the {colour} is spent either way, but with the time at the vat counted "
                "a bar with it would still leave you {grown} less than a plain one, a bar with bought-in colour "
                "{bought} less.",
                colour_of(it), grown, bought);
        case Stand::pigment_dry:
            return say(
                "Leave the bars plain: even with the {colour} powder paid for, a bar with it would leave you {grown} "
                "less than a plain one, a bar with bought-in colour {bought} less.",
                colour_of(it), grown, bought);
    }
    return {};
}

std::string no_target(const Shop& shop, const Verdict& verdict, const Told& it) {
    const auto& bar = verdict.figures.home_less_bought;
    const auto earned_now = verdict.figures.extra_dye_hour.earned;
    if (!bar || !earned_now) {
        return say(
            "From here on the {colour} takes the same time grown or bought in, so only the money decides, which the "
            "lines below show.",
            colour_of(it));
    }
    if (bar->hours > 0 && bar->cash > 0)
        return say("Each hour still to do for the {colour} would earn about {earned}: is that enough for you?",
                   colour_of(it), earned(shop, *earned_now));
    if (bar->hours > 0)
        return say("Each hour still to do for the {colour} would cost you about {earned}.", colour_of(it),
                   earned(shop, *earned_now));
    if (bar->cash >= 0) return say("From here on growing the {colour} is ahead in money and in hours.", colour_of(it));
    return say(
        "Growing the {colour} would save hours and cost {earned} for each of them: is an hour worth that to you?",
        colour_of(it), earned(shop, *earned_now));
}

std::string before_sowing(const Shop& shop, const Verdict& verdict, const Told& it) {
    const auto money = arg("money", it.money);
    const auto hours = arg("hours", it.hours);
    switch (verdict.ruling.word) {
        case RulingWord::buy_in:
            if (!it.known) return say("Buy the {colour} in for next season.", colour_of(it));
            return it.ahead ? say("Buy the {colour} in for next season: at today's prices growing as much again would "
                                  "bring {money} more than buying, too little for the {hours} it would take.",
                                  colour_of(it), money, hours)
                            : say("Buy the {colour} in for next season: at today's prices growing as much again would "
                                  "take {hours} and leave you {money} worse off than buying it.",
                                  colour_of(it), hours, money);
        case RulingWord::grow:
            if (!it.known) return say("Sow the {colour} again.", colour_of(it));
            return it.ahead ? say("Sow the {colour} again: at today's prices as much of it would take {hours} and "
                                  "leave you {money} better off than buying it, and it would pay even at the same "
                                  "price.",
                                  colour_of(it), hours, money)
                            : say("Sow the {colour} again: at today's prices as much of it would cost {money} more "
                                  "than buying, less than the time it would save is worth.",
                                  colour_of(it), money);
        case RulingWord::story_only:
            return story(
                shop, verdict, it,
                message("Sow the {colour} for its story, not for its colour: at today's prices it would pay only "
                        "while people give {needed} more for a bar, and they give you {given} more."));
        default: break;
    }
    const double ahead = verdict.figures.full_difference_at_hurdle.value_or(0);
    return ahead < 0 ? say("Too close to call for the {colour}: in a season like these, at today's prices, growing "
                           "would come out {money} a bar behind buying, but in one like your best ahead.",
                           colour_of(it), a_bar(shop, verdict))
                     : say("Too close to call for the {colour}: in a season like these, at today's prices, growing "
                           "would come out {money} a bar ahead of buying, but in one like your worst it would not pay "
                           "at the same price.",
                           colour_of(it), a_bar(shop, verdict));
}

std::string leaf_standing(const Shop& shop, const Verdict& verdict, const Told& it) {
    const auto an_hour = verdict.figures.extra_dye_hour.earned;
    switch (verdict.ruling.word) {
        case RulingWord::buy_in:
            if (!an_hour) return say("Leave the {colour} in the bed and buy it in.", colour_of(it));
            return *an_hour > 0
                       ? say("Leave the {colour} in the bed and buy it in: what growing it took is spent either way, "
                             "and each hour still to do at the vat would earn only about {earned}.",
                             colour_of(it), earned(shop, *an_hour))
                       : say("Leave the {colour} in the bed and buy it in: what growing it took is spent either way, "
                             "and each hour still to do at the vat would cost you about {earned} more.",
                             colour_of(it), earned(shop, *an_hour));
        case RulingWord::grow:
            if (!an_hour || *an_hour <= 0)
                return say(
                    "Cut the {colour} and work it: what growing it took is spent either way, and what is still "
                    "to do comes out ahead of buying it in.",
                    colour_of(it));
            return say(
                "Cut the {colour} and work it: what growing it took is spent either way, and each hour still "
                "to do at the vat would earn about {earned}.",
                colour_of(it), earned(shop, *an_hour));
        case RulingWord::story_only:
            return story(
                shop, verdict, it,
                message("Cut the {colour} and work it for its story: what growing it took is spent either way, but "
                        "the vat would pay only while people give {needed} more for a bar, and they give you {given} "
                        "more."));
        default: break;
    }
    return say(
        "Too close to call for the {colour} that stands: what growing it took is spent either way, and what is "
        "still to do would come out within {money} a bar of buying it in.",
        colour_of(it), a_bar(shop, verdict));
}

std::string pigment_dry(const Shop& shop, const Verdict& verdict, const Told& it) {
    const auto money = a_bar(shop, verdict);
    switch (verdict.ruling.word) {
        case RulingWord::buy_in:
            return say(
                "Leave the {colour} powder in its jar: what it took is spent either way, and a bar with it "
                "would still leave you {money} less than one with bought-in colour.",
                colour_of(it), money);
        case RulingWord::grow:
        case RulingWord::story_only:
            return say(
                "Pour the {colour} powder you have: what it took is spent either way, and each bar with it "
                "leaves you {money} more than one with bought-in colour.",
                colour_of(it), money);
        default: break;
    }
    return say("The {colour} powder you have and bought-in colour come out within {money} a bar: pour what is at hand.",
               colour_of(it), money);
}

}  // namespace

std::string ahead_headline(const Shop& shop, const Verdict& verdict, const Told& it) {
    if (verdict.ruling.word == RulingWord::leave_plain) return plain(shop, verdict, it);
    if (verdict.ruling.word == RulingWord::no_target) return no_target(shop, verdict, it);
    switch (*verdict.ahead) {
        case Stand::before_sowing: return before_sowing(shop, verdict, it);
        case Stand::leaf_standing: return leaf_standing(shop, verdict, it);
        case Stand::pigment_dry: return pigment_dry(shop, verdict, it);
    }
    return {};
}

}  // namespace dyestead::reports
