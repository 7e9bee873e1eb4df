#include "reports/words/caution_words.h"

#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {

std::string caution_sentence(Caution caution, const std::string& things) {
    const auto named = arg("things", things);
    switch (caution) {
        case Caution::none: return {};
        case Caution::lye:
            return say(
                "{things}: burns skin and eyes. Goggles and gloves, into water and never the reverse, children out "
                "of the room, no aluminium; on skin or in the eyes plenty of water at once.",
                named);
        case Caution::dust:
            return say(
                "{things}: irritating as dust. Wear a mask when weighing, grinding or sieving, and keep it off the "
                "skin.",
                named);
        case Caution::hot:
            return say(
                "{things}: worked hot, and scalds. Goggles, scoop instead of carrying, never leave the flame.", named);
        case Caution::sensitising:
            return say("{things}: can make skin sensitive. Wear gloves, and ask the assessor before it goes into soap.",
                       named);
        case Caution::invasive:
            return say("{things}: spreads, and may not be grown everywhere. Ask before sowing, and let no seed escape.",
                       named);
    }
    return {};
}

std::string allowed_sentence(const std::string& colour, const Allowed* newest) {
    const auto name = arg("colour", colour);
    if (newest == nullptr) {
        return say(
            "The {colour} may not be allowed in soap where you sell: ask the safety assessor before sowing. "
            "Home powder differs from vat to vat, and plants and pigments can make skin sensitive.",
            name);
    }
    const auto asked = arg("asked", newest->asked);
    const auto where = arg("where", newest->where);
    const auto day = arg("day", shown_date(newest->date));
    switch (newest->answer) {
        case Answer::yes: return {};
        case Answer::no:
            return say("The {colour} is not allowed in {where}: {asked} said so on {day}. Sell no bar with it there.",
                       name, where, asked, day);
        case Answer::waiting:
            return say(
                "Whether the {colour} is allowed in {where} is not known yet: {asked} was asked on {day}. Wait "
                "for the answer before sowing.",
                name, where, asked, day);
    }
    return {};
}

std::string verdict_is_a_sum() {
    return say("A sum from your records, not advice to stop or start a trade. Earnings are before income tax.");
}

std::string lye_caution() {
    return say(
        "Lye burns: goggles and gloves, lye into water and never the reverse, children out of the room. A lye "
        "amount worked out here is a check, not a licence: the supplier's own saponification value wins.");
}

std::vector<std::string> vat_cautions() {
    return {
        say("Goggles and gloves at the vat: lime and soda hurt eyes. Plenty of water at once, then a doctor."),
        say("Hot vats scald: scoop, do not carry. No aluminium pans, and no pan goes back to food."),
        say("A standing vat keeps its lid on, out of reach of children and animals. A mask while powder is ground."),
        say("Powder that smells or grows fur is thrown out, not put into soap."),
    };
}

std::vector<std::string> stall_cautions() {
    return {say("The weight on a label must be true on the day it is sold: bars go on losing weight."),
            say("Bars on hold are not to be sold and not to be given away.")};
}

}  // namespace dyestead::reports
