#include "reports/words/unsaid_words.h"

#include "reports/words/say.h"

namespace dyestead::reports {

std::string unsaid_sentence(Unsaid what, const std::string& bar) {
    const Arg name = arg("bar", bar);
    switch (what) {
        case Unsaid::amount:
            return say(
                "{bar}: the recipe does not say how much of every part; write an amount or a share beside each.", name);
        case Unsaid::lye:
            return say(
                "{bar}: the lye cannot be reckoned; give every oil its saponification value and the recipe a "
                "superfat and a lye concentration.",
                name);
        case Unsaid::no_lye: return say("{bar}: no lye or no water is on record; add them to the cupboard.", name);
        case Unsaid::dose: return say("{bar}: no dose of colour is on record; write it beside the recipe.", name);
        case Unsaid::no_colourant:
            return say(
                "{bar}: nothing on record colours it; name a bought match for the colour, or dry a vat of it.", name);
        case Unsaid::no_such_recipe: return say("{bar}: no recipe makes it; add it to one.", name);
    }
    return {};
}

}  // namespace dyestead::reports
