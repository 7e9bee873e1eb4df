#include "gui/models/cautions.h"

#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

std::vector<std::string> vat_cautions() {
    return {
        say("Goggles and gloves at the vat: lime and soda hurt eyes. Plenty of water at once, then a doctor."),
        say("Hot vats scald: scoop, do not carry. No aluminium pans, and no pan goes back to food."),
        say("A standing vat keeps its lid on, out of reach of children and animals. A mask while powder is ground."),
        say("Powder that smells or grows fur is thrown out, not put into soap."),
    };
}

}  // namespace dyestead::gui
