#include "gui/models/cupboard/stock.h"

#include <algorithm>
#include <map>
#include <optional>

#include "domain/decisions/records.h"
#include "gui/models/amounts_shown.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::say;
using reports::say_count;

namespace {

struct InHand {
    const Material* material = nullptr;
    std::int64_t left = 0;
    Cost cost{};
    std::size_t lots = 0;  // with something left
    bool found = false;
};

bool in_cupboard(const Material& material) {
    return material.kind != MaterialKind::bar;
}

char folded(char letter) {
    return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

bool contains(std::string_view text, std::string_view search) {
    const auto same = [](char a, char b) { return folded(a) == folded(b); };
    return search.empty() || std::search(text.begin(), text.end(), search.begin(), search.end(), same) != text.end();
}

// In the order of the materials' keys.
std::map<Key<Material>, InHand> stock(const Books& books, std::string_view search) {
    std::map<Key<Material>, InHand> all;
    const auto& lots = books.shop.all<Lot>();
    for (std::size_t i = 0; i < lots.size() && i < books.ledger.lots.size(); ++i) {
        const LotState& state = books.ledger.lots[i];
        const Material* material = books.shop.find(lots[i].material);
        if (material == nullptr || !in_cupboard(*material) || !state.made) continue;
        InHand& in_hand = all[material->key];
        in_hand.material = material;
        in_hand.left += state.left;
        in_hand.cost += state.cost;
        if (state.left > 0) ++in_hand.lots;
        in_hand.found = in_hand.found || contains(material->name, search) || contains(lots[i].code, search);
    }
    return all;
}

std::vector<reports::Column> material_columns(const std::string& currency) {
    const auto money = arg("currency", currency);
    return {{say("what")},
            {say("in hand"), Align::right},
            {say("lots"), Align::right},
            {say("cost, {currency}", money), Align::right},
            {say("with hours, {currency}", money), Align::right},
            {say("price"), Align::right}};
}

struct LotRow {
    const Lot* lot;
    const LotState* state;
};

std::vector<LotRow> lots_of(const Books& books, Key<Material> material) {
    std::vector<LotRow> rows;
    const auto& lots = books.shop.all<Lot>();
    for (std::size_t i = 0; i < lots.size() && i < books.ledger.lots.size(); ++i) {
        if (lots[i].material == material && books.ledger.lots[i].made)
            rows.push_back({&lots[i], &books.ledger.lots[i]});
    }
    std::ranges::stable_sort(rows, [](const LotRow& one, const LotRow& other) {
        if ((one.state->left > 0) != (other.state->left > 0)) return one.state->left > 0;
        return *one.state->made < *other.state->made;
    });
    return rows;
}

}  // namespace

MaterialList cupboard_list(const Books& books, std::string_view search) {
    const std::string currency = reports::currency_of(books.shop);
    std::vector<InHand> found;
    for (const auto& [key, in_hand] : stock(books, search)) {
        if (in_hand.found) found.push_back(in_hand);
    }
    std::ranges::stable_sort(found, [](const InHand& one, const InHand& other) {
        if ((one.left > 0) != (other.left > 0)) return one.left > 0;
        return one.material->name < other.material->name;
    });
    MaterialList list{
        .table = {.title = say("Stock"), .columns = material_columns(currency), .rows = {}}, .materials = {}};
    for (const InHand& each : found) {
        list.materials.push_back(each.material->key);
        list.table.rows.push_back({words_cell(each.material->name), held_cell(*each.material, each.left),
                                   count_cell(each.lots), money_cell(number(each.cost.cash()), currency),
                                   money_cell(number(each.cost.full()), currency),
                                   price_cell(*each.material, each.cost.cash(), each.left, currency)});
    }
    return list;
}

reports::Table lot_list(const Books& books, Key<Material> material) {
    reports::Table table{.title = say("Lots"),
                         .columns = {{say("lot")},
                                     {say("came on"), Align::right},
                                     {say("left"), Align::right},
                                     {say("best before"), Align::right},
                                     {say("cost"), Align::right}},
                         .rows = {}};
    const Material* of = books.shop.find(material);
    if (of == nullptr) return table;
    const std::string currency = reports::currency_of(books.shop);
    for (const auto& [lot, state] : lots_of(books, material)) {
        // What is used up still tells what it cost.
        const bool any = state->left > 0;
        table.rows.push_back({words_cell(lot->code), day_cell(*state->made), held_cell(*of, state->left),
                              state->best_before ? day_cell(*state->best_before) : no_cell(),
                              price_cell(*of, any ? state->cost.cash() : state->cost_in.cash(),
                                         any ? state->left : state->received, currency)});
    }
    return table;
}

std::string material_sentence(const Books& books, Key<Material> material) {
    const Material* of = books.shop.find(material);
    if (of == nullptr) return {};
    std::int64_t left = 0;
    std::size_t lots = 0;
    for (const LotRow& row : lots_of(books, material)) {
        left += row.state->left;
        if (row.state->left > 0) ++lots;
    }
    const auto name = arg("name", of->name);
    if (lots == 0) return say("{name}: none left.", name);
    const std::string amount = reports::shown_quantity({kind_of(of->held_as), left});
    return say_count(
        "{name}: {amount} in one lot.", "{name}: {amount} in {count} lots.", lots, name, arg("amount", amount));
}

std::string cupboard_state(const Books& books) {
    const std::string currency = reports::currency_of(books.shop);
    Cost cost;
    std::size_t things = 0;
    for (const auto& [key, in_hand] : stock(books, {})) {
        cost += in_hand.cost;
        if (in_hand.left > 0) ++things;
    }
    if (things == 0) return say("The cupboard is bare: nothing is on record in it.");
    const std::string cash = reports::rough_money(number(cost.cash()), currency);
    const std::string full = reports::rough_money(number(cost.full()), currency);
    return say_count("One thing in hand, {cash} at cost without your own hours, {full} with them.",
                     "{count} things in hand, {cash} at cost without your own hours, {full} with them.", things,
                     arg("cash", cash), arg("full", full));
}

}  // namespace dyestead::gui
