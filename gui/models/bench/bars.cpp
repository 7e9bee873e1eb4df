#include "gui/models/bench/bars.h"

#include <cmath>

#include "domain/ledger/lye.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;
using reports::say_count;

namespace {

std::string lye_words(const Shop& shop, const Batch& batch) {
    const LyeCheck check = lye_check(shop, batch);
    if (!check.difference) return say("lye not right");
    const double off = number(*check.difference);
    const auto share = arg("share", reports::shown_percent(std::fabs(off)));
    return off > 0 ? say("lye {share} over", share) : say("lye {share} short", share);
}

}  // namespace

std::vector<Choice> bar_choices(const Shop& shop) {
    return material_choices(shop, [](const Material& material) { return material.kind == MaterialKind::bar; });
}

std::vector<Choice> bars_of_recipe(const Shop& shop, Key<Recipe> recipe) {
    std::vector<Choice> choices;
    for (const RecipeColouring& line : shop.all<RecipeColouring>())
        if (line.head == recipe) choices.push_back({KeyCodes{}.code_of(line.bar), reports::called(shop, line.bar)});
    return choices;
}

const Recipe* recipe_of_bar(const Shop& shop, Key<Material> bar) {
    const auto& lines = shop.all<RecipeColouring>();
    const auto line = std::ranges::find(lines, bar, &RecipeColouring::bar);
    return line == lines.end() ? nullptr : shop.find(line->head);
}

std::vector<Choice> bar_lot_choices(const Books& books, const std::function<bool(const ShelfLot&)>& wanted) {
    std::vector<Choice> choices;
    for (const ShelfLot& lot : shelf({books.shop, books.ledger}).lots) {
        if (wanted && !wanted(lot)) continue;
        const auto bars = static_cast<std::uint64_t>(whole_bars(lot.bars));
        choices.push_back(
            {KeyCodes{}.code_of(lot.lot),
             say_count("{bar}, lot {lot}, one bar, {state}", "{bar}, lot {lot}, {count} bars, {state}", bars,
                       arg("bar", reports::called(books.shop, lot.bar)),
                       arg("lot", reports::called(books.shop, lot.lot)), arg("state", bar_state_words(books, lot)))});
    }
    return choices;
}

std::vector<Choice> sellable_lot_choices(const Books& books, const std::vector<std::optional<Key<Lot>>>& chosen) {
    std::vector<Choice> choices = bar_lot_choices(books, [&](const ShelfLot& lot) {
        return lot.state == BarState::ready || std::ranges::find(chosen, std::optional{lot.lot}) != chosen.end();
    });
    for (const auto& lot : chosen) {
        const std::string code = lot ? KeyCodes{}.code_of(*lot) : std::string{};
        if (lot && std::ranges::find(choices, code, &Choice::code) == choices.end())
            choices.push_back({code, say("{bar}, lot {lot}, none left",
                                         arg("bar",
                                             [&] {
                                                 const Lot* found = books.shop.find(*lot);
                                                 return found == nullptr ? std::string{}
                                                                         : reports::called(books.shop, found->material);
                                             }()),
                                         arg("lot", reports::called(books.shop, *lot)))});
    }
    choices.insert(choices.begin(), Choice{"", say("by rule")});
    return choices;
}

std::map<Key<Material>, int> ready_bars(const Books& books) {
    std::map<Key<Material>, int> ready;
    for (const ShelfLot& lot : shelf({books.shop, books.ledger}).lots)
        if (lot.state == BarState::ready) ready[lot.bar] += whole_bars(lot.bars);
    return ready;
}

std::string held_words(const Shop& shop, const Held& held) {
    switch (held.why) {
        case HeldFor::hold:
            if (const Hold* hold = shop.find(Key<Hold>{held.fact.key})) return hold->why;
            break;
        case HeldFor::lye_off:
            if (const Batch* batch = shop.find(Key<Batch>{held.fact.key})) return lye_words(shop, *batch);
            break;
        case HeldFor::no_superfat: return say("no oil is left over");
    }
    return {};
}

std::string bar_state_words(const Books& books, const ShelfLot& lot) {
    switch (lot.state) {
        case BarState::held: return say("on hold: {why}", arg("why", held_words(books.shop, *lot.held)));
        case BarState::past_best:
            return say("past its best since {day}", arg("day", reports::shown_date(*lot.best_before)));
        case BarState::in_cure:
        case BarState::ready: return say("ready {day}", arg("day", reports::shown_date(lot.ready)));
    }
    return {};
}

}  // namespace dyestead::gui
