// improve.h - which few changes would help growing a colour most, in what a season brings?
//
// Each is one change of the verdict's model, all else as it was: a season's gain is what all its bars, grown less
// bought in, bring more at the hurdle. Which changes are tried, and how far they go, is our own choice.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/dye_hours.h"

namespace dyestead {

enum class Improvement : std::uint8_t {
    free_water,     // tap or rain water for bought water
    fuller_vats,    // every vat as full as the largest so far
    bigger_vats,    // two vats' harvest in one
    quicker_step,   // the longest step at the vat in half its time
    one_wash_less,  // of a step that is done several times
    no_failed_vat,  // none that gives nothing
    best_season,    // powder from a kilo as in the best season
    higher_price,   // a grown bar one price step dearer
};

struct Improving {
    Improvement what{};
    std::string step;  // its own words, for a step
    double now = 0;    // money a kilo, kilos, minutes a vat, times, vats, grams a kilo, or a price
    double then = 0;
    double gain = 0;        // money over the window's bars
    bool turns_it = false;  // with it alone, growing comes out ahead
};

// At most `most`, the greatest gain first; nothing that gains nothing. Empty without a model or a hurdle.
std::vector<Improving> improvements(const Shop& shop, const Ledger& ledger, const Verdict& verdict,
                                    std::size_t most = 3);

}  // namespace dyestead
