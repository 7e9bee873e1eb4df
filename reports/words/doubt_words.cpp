#include "reports/words/doubt_words.h"

#include <cmath>

#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

std::string chance_sentence(const Doubt& doubt) {
    if (!doubt.home_beats_bought_cash) return {};
    const auto without = arg("without", in_tenths(*doubt.home_beats_bought_cash));
    if (!doubt.home_beats_bought)
        return say(
            "How sure: the chance that a season's growing comes out ahead of buying in is {without}, before "
            "your time.",
            without);
    return say(
        "How sure: the chance that a season's growing comes out ahead of buying in is {with} with your time "
        "counted, {without} without.",
        arg("with", in_tenths(*doubt.home_beats_bought)), without);
}

std::string years_sentence(const Doubt& doubt, const std::string& currency) {
    const auto& band = doubt.full_margin ? doubt.full_margin : doubt.cash_margin;
    if (!band) return {};
    const auto bad = arg("bad", shown_money(band->bad, currency));
    const auto usual = arg("usual", shown_money(band->usual, currency));
    const auto good = arg("good", shown_money(band->good, currency));
    return doubt.full_margin ? say("After your time a grown bar would leave {bad} in a bad year, {usual} in a usual "
                                   "one and {good} in a good one, if the season gives any.",
                                   bad, usual, good)
                             : say("Before your time a grown bar would leave {bad} in a bad year, {usual} in a usual "
                                   "one and {good} in a good one, if the season gives any.",
                                   bad, usual, good);
}

std::string matters_sentence(const Doubt& doubt, const std::string& currency) {
    if (doubt.matters.empty()) return {};
    const Matter& most = doubt.matters.front();
    const auto what = arg("what", doubt_of_words(most.of));
    const auto swing = arg("money", rough_money(most.swing(), currency));
    double worth = 0;
    for (const Matter& each : doubt.matters) worth = std::max(worth, each.perfect_forecast);
    // Worth less than the least coin that is written, it would change nothing.
    if (worth < 0.01)
        return say(
            "What matters most: {what}. From a bad year to a good one it moves a season by {money}, but knowing "
            "it beforehand would not change what to do.",
            what, swing);
    return say(
        "What matters most: {what}. From a bad year to a good one it moves a season by {money}; knowing one of "
        "these things beforehand would be worth up to {worth} a season.",
        what, swing, arg("worth", rough_money(worth, currency)));
}

std::string one_more_sentence(const Doubt& doubt) {
    if (!doubt.one_more_season || *doubt.one_more_season >= 0.995) return {};
    return say_count("One more season of one vat on record would narrow this by {share}.",
                     "One more season of {count} vats on record would narrow this by {share}.",
                     static_cast<std::uint64_t>(doubt.season_vats),
                     arg("share", shown_percent(1 - *doubt.one_more_season)));
}

}  // namespace

std::string in_tenths(double chance) {
    const auto tenths = static_cast<int>(std::lround(chance * 10));
    if (tenths == 0) return say("fewer than 1 in 10");
    if (tenths == 10) return say("more than 9 in 10");
    return say("{count} in 10", arg("count", tenths));
}

std::string doubt_of_words(DoubtOf of) {
    switch (of) {
        case DoubtOf::yield: return say("how much powder a kilo gives");
        case DoubtOf::vat_time: return say("your time at the vats");
        case DoubtOf::strength: return say("how strong the powder is");
        case DoubtOf::failed_vats: return say("vats that give nothing");
        case DoubtOf::lost_crop: return say("a crop that fails");
    }
    return {};
}

std::vector<std::string> doubt_lines(const Shop& shop, const Verdict& verdict) {
    const Doubt& doubt = verdict.doubt;
    const std::string currency = currency_of(shop);
    std::vector<std::string> lines;
    const auto add = [&](std::string line) {
        if (!line.empty()) lines.push_back(std::move(line));
    };
    switch (doubt.kind) {
        case DoubtKind::unknown: return lines;
        case DoubtKind::extremes:
            if (doubt.at_hurdle)
                add(
                    say("How sure: too few vats for a chance. If all were like your worst one, a season would leave "
                        "you {bad} against buying in; like your best, {good}.",
                        arg("bad", shown_money(doubt.at_hurdle->bad, currency)),
                        arg("good", shown_money(doubt.at_hurdle->good, currency))));
            return lines;
        case DoubtKind::one_season:
            add(say("How sure: one season says little of the next, so no chance is given."));
            break;
        case DoubtKind::chance: add(chance_sentence(doubt)); break;
    }
    add(years_sentence(doubt, currency));
    add(matters_sentence(doubt, currency));
    add(one_more_sentence(doubt));
    return lines;
}

}  // namespace dyestead::reports
