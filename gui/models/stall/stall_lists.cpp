#include "gui/models/stall/stall_lists.h"

#include <algorithm>

#include "domain/decisions/fair_plan.h"
#include "domain/decisions/shelf.h"
#include "domain/text/amounts.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/bench/bars.h"
#include "gui/models/stall/fair_form.h"
#include "gui/models/stall/price_forms.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::Align;
using reports::arg;
using reports::Cell;
using reports::say;
using reports::say_count;

namespace {

Cell count(int number) {
    return number_cell(number, fmt::to_string(number));
}

Cell money(std::optional<double> value, const std::string& currency) {
    return value ? money_cell(*value, currency) : no_cell();
}

Cell money(std::optional<Money> value, const std::string& currency) {
    return money(value ? std::optional{number(*value)} : std::nullopt, currency);
}

reports::Column figures(std::string heading) {
    return {std::move(heading), Align::right};
}

std::string ended_words(const Shop& shop, const Fair& fair, Day day) {
    if (fair.date > day) return say("to come");
    if (to_count_back(shop, fair, day)) return say("to be counted back");
    switch (fair.ended) {
        case FairEnded::as_usual: return say("as usual");
        case FairEnded::cut_short: return say("cut short");
        case FairEnded::did_not_happen: return say("did not happen");
    }
    return {};
}

}  // namespace

Listing bar_list(const Books& books, std::string_view find) {
    const std::string currency = reports::currency_of(books.shop);
    const auto money_in = arg("currency", currency);
    Listing list{
        .name = say("Bars and prices"),
        .table = {.title = say("Bars and prices"),
                  .columns = {{say("bar")},
                              {say("ready"), Align::right},
                              figures(say("price, {currency}", money_in)),
                              figures(say("floor, {currency}", money_in)),
                              figures(say("left over, {currency}", money_in)),
                              figures(say("an hour earns, {currency}", money_in))},
                  .rows = {},
                  .note = say("Floor: materials and fees of one more bar come back. Left over: before your time, after "
                              "fees and stall. An hour earns: making and selling together.")},
        .rows = {},
        .empty = say("No recipe makes a bar yet. Write one down at the Bench; its bars stand here with their price.")};
    const Prices answer = prices(books.shop, books.ledger);
    const auto ready = ready_bars(books);
    for (const BarPrice& each : answer.bars) {
        const Material* bar = books.shop.find(each.bar);
        if (bar == nullptr || !holds({bar->name, bar->code}, find)) continue;
        const auto there = ready.find(each.bar);
        list.rows.push_back(ref(*bar));
        list.table.rows.push_back({words_cell(bar->name), count(there == ready.end() ? 0 : there->second),
                                   money(each.shelf, currency), money(each.floor, currency),
                                   money(left_over(answer, each), currency), money(each.per_hour, currency)});
    }
    return list;
}

Listing fair_list(const Books& books, std::string_view find) {
    const Shop& shop = books.shop;
    const std::string currency = reports::currency_of(shop);
    const auto money_in = arg("currency", currency);
    Listing list{
        .name = say("Fairs"),
        .table = {.title = say("Fairs"),
                  .columns = {{say("on")},
                              {say("fair")},
                              {say("the day was")},
                              {say("sold of taken"), Align::right},
                              figures(say("takings, {currency}", money_in)),
                              figures(say("left, {currency}", money_in))},
                  .rows = {},
                  .note =
                      say("Left for your time: after fees, stall, travel and what the bars sold had cost to make.")},
        .rows = {},
        .empty = say("Enter a fair, even a past one: what went out, what came home, what was in the tin.")};
    std::vector<const Fair*> fairs;
    for (const Fair& fair : shop.all<Fair>())
        if (fair.noted.value_or(books.as_of()) <= books.as_of() && holds({fair.name}, find)) fairs.push_back(&fair);
    std::ranges::stable_sort(fairs, [](const Fair* one, const Fair* other) { return one->date > other->date; });
    for (const Fair* fair : fairs) {
        int taken = 0;
        int back = 0;
        for (const FairLine& line : shop.all<FairLine>()) {
            if (line.head != fair->key) continue;
            taken += line.taken;
            back += line.back;
        }
        const bool over = fair->date <= books.as_of() && !to_count_back(shop, *fair, books.as_of());
        const FairResult result = over ? fair_result(shop, books.ledger, fair->key) : FairResult{};
        list.rows.push_back(ref(*fair));
        list.table.rows.push_back(
            {day_cell(fair->date), words_cell(fair->name), words_cell(ended_words(shop, *fair, books.as_of())),
             over ? number_cell(taken - back, say("{sold} of {taken}", arg("sold", taken - back), arg("taken", taken)))
                  : no_cell(),
             over ? money_cell(result.takings, currency) : no_cell(),
             over ? money_cell(result.left, currency) : no_cell()});
    }
    return list;
}

Listing price_list(const Books& books, std::string_view find) {
    const Shop& shop = books.shop;
    const std::string currency = reports::currency_of(shop);
    const auto money_in = arg("currency", currency);
    Listing list{.name = say("Price list"),
                 .table = {.title = say("Price list"),
                           .columns = {{say("from")},
                                       {say("bar or colour")},
                                       figures(say("price, {currency}", money_in)),
                                       {say("believed plain"), Align::right},
                                       {say("bought in"), Align::right},
                                       {say("our own"), Align::right}},
                           .rows = {}},
                 .rows = {},
                 .empty = say("No price yet. Put down what a bar sells for, from a day on.")};
    std::vector<std::pair<std::string, const Price*>> listed;
    for (const Price& price : shop.all<Price>()) listed.emplace_back(reports::called(shop, price.bar), &price);
    std::ranges::stable_sort(listed, [](const auto& one, const auto& other) {
        return one.first != other.first ? one.first < other.first : one.second->from > other.second->from;
    });
    for (const auto& [bar, price] : listed) {
        if (!holds({bar}, find)) continue;
        list.rows.push_back(ref(*price));
        list.table.rows.push_back(
            {day_cell(price->from), words_cell(bar), money(price->shelf, currency), no_cell(), no_cell(), no_cell()});
    }
    const auto other = [&](const auto& price, std::string of) {
        if (!holds({of}, find)) return;
        list.rows.push_back(ref(price));
        list.table.rows.push_back({day_cell(price.from), words_cell(std::move(of)), money(price.price, currency),
                                   no_cell(), no_cell(), no_cell()});
    };
    for (const WholesalePrice& price : shop.all<WholesalePrice>())
        other(price, say("{bar}, for shops", arg("bar", reports::called(shop, price.bar))));
    for (const PowderPrice& price : shop.all<PowderPrice>())
        other(price, say("{colour} powder, {pack}", arg("colour", reports::called(shop, price.colour)),
                         arg("pack", print(price.pack))));
    for (const PriceBelief& belief : shop.all<PriceBelief>()) {
        const std::string colour = reports::called(shop, belief.colour);
        if (!holds({colour}, find)) continue;
        list.rows.push_back(ref(belief));
        list.table.rows.push_back({day_cell(belief.date), words_cell(colour), no_cell(), money(belief.plain, currency),
                                   money(belief.bought, currency), money(belief.own, currency)});
    }
    return list;
}

reports::Table bar_table(const Books& books, const Prices& answer, Key<Material> key) {
    const std::string currency = reports::currency_of(books.shop);
    reports::Table table{.title = say("One bar"), .columns = {{say("what")}, {currency, Align::right}}, .rows = {}};
    const auto found = std::ranges::find(answer.bars, key, &BarPrice::bar);
    if (found == answer.bars.end()) return table;
    const auto row = [&](std::string what, std::optional<double> value) {
        if (value) table.rows.push_back({words_cell(std::move(what)), money_cell(*value, currency)});
    };
    if (const auto& cost = found->replacement) {
        row(say("to make again: materials"), cost->materials);
        if (cost->colour > 0) row(say("of it the colour"), cost->colour);
        row(say("running costs"), cost->overhead);
        row(say("your hours"), cost->labour);
        row(say("to make again, in all"), cost->full());
    }
    row(say("the same shade bought in"), found->colour_bought);
    row(say("selling it: stall, travel, post"), answer.selling_cost);
    row(say("newest bars did cost, without your hours"), found->booked_without_labour);
    row(say("newest bars did cost, with them"), found->booked_full);
    row(say("price that pays your hours"), found->for_hour);
    row(say("price that pays the margin"), found->for_margin);
    row(say("price that pays the markup"), found->for_markup);
    row(say("price that reaches it all"), found->advised);
    row(say("asked of shops"), found->wholesale.price);
    row(say("least to ask of shops"), found->wholesale.floor);
    row(say("asked of shops, pays your hours"), found->wholesale.full_cost);
    return table;
}

std::string stall_state(const Books& books) {
    const Shelf on_shelf = shelf({books.shop, books.ledger});
    const auto ready = ready_bars(books);
    std::uint64_t bars = 0;
    for (const auto& [bar, number] : ready) bars += static_cast<std::uint64_t>(number);
    const int held = whole_bars(on_shelf.bars(BarState::held));
    std::string state;
    if (bars > 0 && ready.size() == 1)
        state = say_count("One bar ready.", "{count} bars ready.", bars);
    else if (bars > 0)
        state = say("{bars} bars ready in {kinds} kinds.", arg("bars", bars), arg("kinds", ready.size()));
    else if (const auto next = std::ranges::find(on_shelf.lots, BarState::in_cure, &ShelfLot::state);
             next != on_shelf.lots.end())
        state =
            say("No bars ready yet; the next come out of cure on {day}.", arg("day", reports::shown_date(next->ready)));
    else
        state = say("No bars ready, and none in cure.");
    if (held > 0)
        state += " " + say_count("One bar on hold.", "{count} bars on hold.", static_cast<std::uint64_t>(held));
    const auto fair = next_fair(books.shop, books.as_of());
    if (fair)
        state += " " + say("Next fair: {fair}, {day}.", arg("fair", reports::called(books.shop, *fair)),
                           arg("day", reports::shown_date(books.shop.find(*fair)->date)));
    return state;
}

}  // namespace dyestead::gui
