#include "reports/words/memory_words.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "domain/text/decimal.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {

std::string memory_question(int question) {
    switch (question) {
        case 1: return say("Which plant do you grow, and which colour does it give?");
        case 2: return say("How many hours did the bed take last season, everybody's together?");
        case 3: return say("How much money went out for growing and for the vats last season?");
        case 4: return say("How many vats did you work, and how long were your hands busy with one?");
        case 5: return say("How much dry powder did they give in all?");
        case 6: return say("How much of your powder goes into a loaf, and how many bars is a loaf?");
        case 7:
            return say(
                "For the shade of one gram of yours, how much of the bought powder does it take: as much, half, a "
                "third, a tenth, or never tried?");
        case 8: return say("What does the bought colour cost, and how much do you get for that?");
        case 9: return say("What does a bar sell for: plain, with bought colour, with your own?");
        default: return say("What should an hour bring you? Leave it blank if you would rather not say.");
    }
}

std::string memory_blank(Recalled blank) {
    switch (blank) {
        case Recalled::plant: return say("Plant");
        case Recalled::colour: return say("Colour");
        case Recalled::garden_hours: return say("Hours at the bed, all together");
        case Recalled::money_out: return say("Money out for bed and vats");
        case Recalled::vats: return say("Vats worked");
        case Recalled::vat_time: return say("Your time at one vat");
        case Recalled::powder: return say("Dry powder in all");
        case Recalled::dose: return say("Powder in a loaf");
        case Recalled::loaf_bars: return say("Bars in a loaf");
        case Recalled::strength: return say("Bought powder for the same shade");
        case Recalled::bought_price: return say("Price of the bought colour");
        case Recalled::bought_amount: return say("Weight for that price");
        case Recalled::plain_bar: return say("Price of a plain bar");
        case Recalled::bought_bar: return say("With bought colour");
        case Recalled::own_bar: return say("With your own");
        case Recalled::hour: return say("An hour should bring");
    }
    return {};
}

std::string memory_example(Recalled blank) {
    switch (blank) {
        case Recalled::plant: return say("like weld");
        case Recalled::colour: return say("like yellow");
        case Recalled::garden_hours:
        case Recalled::vat_time: return say("like 12 h or ~90 min");
        case Recalled::vats:
        case Recalled::loaf_bars: return say("a whole number, like 6");
        case Recalled::powder:
        case Recalled::dose:
        case Recalled::bought_amount: return say("like 20 g");
        case Recalled::strength: return say("as much, half, a third, a tenth, never tried, or a number like 0.4");
        case Recalled::money_out:
        case Recalled::bought_price:
        case Recalled::plain_bar:
        case Recalled::bought_bar:
        case Recalled::own_bar:
        case Recalled::hour: return say("like 6.50");
    }
    return {};
}

std::string memory_answer(Recalled blank, const std::string& typed) {
    if (blank != Recalled::strength) return typed;
    const std::array words{say("as much"), say("half"), say("a third"), say("a tenth"), say("never tried")};
    const auto* const found = std::ranges::find(words, trimmed(typed));
    if (found == words.end()) return typed;
    return std::string{kWords<StrengthWord>[static_cast<std::size_t>(found - words.begin())]};
}

std::string memory_bar_line(const Shop& shop, const Verdict& verdict) {
    const auto& bought = verdict.figures.home_less_bought;
    const auto& plain = verdict.figures.home_less_plain;
    if (!bought || !plain) return {};
    const std::string currency = currency_of(shop);
    const auto than_bought = arg("bought", shown_money(std::abs(bought->cash), currency));
    const auto than_plain = arg("plain", shown_money(std::abs(plain->cash), currency));
    if (bought->cash >= 0)
        return plain->cash >= 0 ? say("Each bar: before your time a grown one leaves {bought} more than one with "
                                      "bought-in colour and {plain} more than a plain one.",
                                      than_bought, than_plain)
                                : say("Each bar: before your time a grown one leaves {bought} more than one with "
                                      "bought-in colour and {plain} less than a plain one.",
                                      than_bought, than_plain);
    return plain->cash >= 0 ? say("Each bar: before your time a grown one leaves {bought} less than one with bought-in "
                                  "colour and {plain} more than a plain one.",
                                  than_bought, than_plain)
                            : say("Each bar: before your time a grown one leaves {bought} less than one with bought-in "
                                  "colour and {plain} less than a plain one.",
                                  than_bought, than_plain);
}

std::vector<std::string> memory_stands_on(const Verdict& verdict) {
    std::vector<std::string> lines{
        say("From memory: this stands on your answers to ten questions and on no record, and one season stands for "
            "all.")};
    lines.push_back(verdict.figures.pigment.strength
                        ? say("What would make it surer first: the next vat timed, its leaf and its powder weighed.")
                        : say("What would make it surer first: a test bar of yours beside one with bought-in colour."));
    return lines;
}

}  // namespace dyestead::reports
