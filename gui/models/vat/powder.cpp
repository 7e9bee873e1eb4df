#include "gui/models/vat/powder.h"

#include <algorithm>

#include "domain/decisions/records.h"
#include "gui/models/amounts_shown.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::Cell;
using reports::say;

namespace {

struct Powder {
    const Lot* lot;
    const Material* material;
    const LotState* state;
};

std::vector<Powder> powders(const Books& books) {
    std::vector<Powder> all;
    const auto& lots = books.shop.all<Lot>();
    for (std::size_t i = 0; i < lots.size() && i < books.ledger.lots.size(); ++i) {
        const Material* material = books.shop.find(lots[i].material);
        const LotState& state = books.ledger.lots[i];
        if (material != nullptr && material->kind == MaterialKind::pigment && state.made) {
            all.push_back({&lots[i], material, &state});
        }
    }
    std::ranges::sort(all, [](const Powder& one, const Powder& other) {
        if ((one.state->left > 0) != (other.state->left > 0)) return one.state->left > 0;
        return std::tuple{*one.state->made, one.lot->key} > std::tuple{*other.state->made, other.lot->key};
    });
    return all;
}

// The newest test counts: a second look after the cure replaces the first.
Cell strength_cell(const Books& books, Key<Lot> lot) {
    const ShadeTest* newest = nullptr;
    for (const ShadeTest& test : books.shop.all<ShadeTest>()) {
        const bool counts = test.lot == lot && test.date <= books.as_of();
        if (counts && (newest == nullptr || test.date >= newest->date)) newest = &test;
    }
    if (newest == nullptr) return {.shown = say("not tested"), .number = std::nullopt, .no_value = true};
    if (!newest->needed_for_same) {
        return {.shown = say("cannot be compared"), .number = std::nullopt, .no_value = true};
    }
    const double needed = number(*newest->needed_for_same);
    return number_cell(needed, say("{times} g", arg("times", reports::shown_number(needed))));
}

}  // namespace

PowderList powder_list(const Books& books) {
    const auto currency = reports::currency_of(books.shop);
    const auto money = arg("currency", currency);
    reports::Table table{.title = say("Powder"),
                         .columns = {{say("lot")},
                                     {say("dried on"), Align::right},
                                     {say("left, g"), Align::right},
                                     {say("as 1 g bought"), Align::right},
                                     {say("{currency} a g", money), Align::right},
                                     {say("without hours"), Align::right}},
                         .rows = {}};
    std::vector<Key<Lot>> lots;
    for (const Powder& powder : powders(books)) {
        lots.push_back(powder.lot->key);
        const double received = grams(*powder.material, powder.state->received).value_or(0);
        const double left = grams(*powder.material, powder.state->left).value_or(0);
        const auto each = [&](Money cost) {
            return received > 0 ? money_cell(number(cost) / received, currency) : no_cell();
        };
        table.rows.push_back({words_cell(powder.lot->code), day_cell(*powder.state->made),
                              number_cell(left, reports::shown_number(left)), strength_cell(books, powder.lot->key),
                              each(powder.state->cost_in.full()), each(powder.state->cost_in.cash())});
    }
    return {.table = std::move(table), .lots = std::move(lots)};
}

std::vector<std::pair<std::string, double>> powder_in_hand(const Books& books) {
    std::vector<std::pair<std::string, double>> all;
    for (const Colour& colour : books.shop.all<Colour>()) {
        double left = 0;
        for (const Powder& powder : powders(books)) {
            if (powder.material->colour == colour.key) left += grams(*powder.material, powder.state->left).value_or(0);
        }
        if (left > 0) all.emplace_back(reports::colour_in_a_sentence(books.shop, colour.key), left);
    }
    return all;
}

}  // namespace dyestead::gui
