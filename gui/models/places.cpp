#include "gui/models/places.h"

#include <algorithm>

#include "reports/words/say.h"

namespace dyestead::gui {

using reports::say;

std::string place_name(Place place) {
    switch (place) {
        case Place::today: return say("Today");
        case Place::garden: return say("Garden");
        case Place::vat: return say("Vat");
        case Place::bench: return say("Bench");
        case Place::cupboard: return say("Cupboard");
        case Place::stall: return say("Stall");
        case Place::verdict: return say("Verdict");
        case Place::books: return say("Books");
    }
    return {};
}

std::optional<Place> place_named(std::string_view name) {
    constexpr std::array<std::string_view, 8> kNames{
        "today", "garden", "vat", "bench", "cupboard", "stall", "verdict", "books"};
    const auto same_letter = [](char typed, char ours) {
        return (typed >= 'A' && typed <= 'Z' ? static_cast<char>(typed - 'A' + 'a') : typed) == ours;
    };
    const auto found = std::ranges::find_if(
        kNames, [&](std::string_view ours) { return std::ranges::equal(name, ours, same_letter); });
    if (found == kNames.end()) return std::nullopt;
    return kPlaces[static_cast<std::size_t>(found - kNames.begin())];
}

std::string place_purpose(Place place) {
    switch (place) {
        case Place::today:
            return say("What wants doing: vats to see to, bars out of cure, what runs short, fairs ahead.");
        case Place::garden: return say("The beds on a line of the season: what was sown, cut and tended.");
        case Place::vat: return say("How each vat was worked, what it gave, and what a gram of powder cost.");
        case Place::bench: return say("The recipes with their lye, the batches and the curing shelf.");
        case Place::cupboard: return say("What is in the cupboard, lot by lot, and what it cost.");
        case Place::stall: return say("The bars that are ready, their prices, and the fairs before and after.");
        case Place::verdict: return say("Is growing the colour worth the hours, next to buying it in?");
        case Place::books: return say("The questions for the books: stock at a date, money in and out, hours, recall.");
    }
    return {};
}

std::string nothing_open() {
    return say("No shop is open.");
}

std::string how_to_open() {
    return say(
        "Begin a new shop for your own records: it is one file, saved by itself at every entry, and everything can be "
        "undone. Or open a shop file that is there already; it ends in .dyestead, and looking changes nothing in it. "
        "To look round a shop with two years of records, run sample-shop/open.");
}

}  // namespace dyestead::gui
