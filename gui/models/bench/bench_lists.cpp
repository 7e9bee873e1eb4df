#include "gui/models/bench/bench_lists.h"

#include <algorithm>

#include "domain/facts/recipe_amounts.h"
#include "domain/ledger/lye.h"
#include "gui/models/amounts_shown.h"
#include "gui/models/bench/bars.h"
#include "gui/models/bench/cut_form.h"
#include "reports/batch_cost.h"
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

Cell both_costs(const std::optional<reports::BarCosts>& costs, const std::string& currency) {
    if (!costs) return no_cell();
    return number_cell(
        costs->with_time, say("{cash} / {full}", arg("cash", reports::bare_money(costs->without_time, currency)),
                              arg("full", reports::bare_money(costs->with_time, currency))));
}

template <class Fact>
std::vector<const Fact*> newest_first(const Shop& shop, Day last) {
    std::vector<const Fact*> facts;
    for (const Fact& fact : shop.all<Fact>())
        if (fact.date <= last) facts.push_back(&fact);
    std::ranges::sort(facts, [](const Fact* one, const Fact* other) {
        return std::tuple{one->date, one->key} > std::tuple{other->date, other->key};
    });
    return facts;
}

Cell ready_cell(const Shelf& shelf, const Cut* cut) {
    if (cut == nullptr) return words_cell(say("not cut"));
    const auto lot = std::ranges::find(shelf.lots, cut->lot, &ShelfLot::lot);
    if (lot != shelf.lots.end() && lot->held) return words_cell(say("on hold"));
    return day_cell(cut->cured);
}

}  // namespace

Listing batch_list(const Books& books, std::string_view find) {
    const Shop& shop = books.shop;
    const std::string currency = reports::currency_of(shop);
    Listing list{.name = say("Batches"),
                 .table = {.title = say("Batches"),
                           .columns = {{say("no.")},
                                       {say("bar")},
                                       {say("poured")},
                                       {say("bars"), Align::right},
                                       {say("ready")},
                                       {say("a bar, {currency}", arg("currency", currency)), Align::right}},
                           .note = say("Without what is still to come: wrapping, and the cut of what stands.")},
                 .empty = say("No batch yet. Pour one: choose its recipe, and what goes in is filled in for you.")};
    const Shelf on_shelf = shelf({shop, books.ledger});
    for (const Batch* batch : newest_first<Batch>(shop, books.as_of())) {
        const std::string bar = reports::called(shop, batch->bar);
        if (!holds({batch->code, bar, reports::called(shop, batch->recipe)}, find)) continue;
        const Cut* cut = reports::cut_of(books.shop, books.ledger, batch->key);
        const Recipe* recipe = shop.find(batch->recipe);
        const int bars = cut != nullptr      ? std::max(0, cut->bars - cut->rejected)
                         : recipe != nullptr ? recipe->bars_per_loaf * batch->loaves
                                             : 0;
        list.rows.push_back(ref(*batch));
        list.table.rows.push_back({words_cell(batch->code), words_cell(bar), day_cell(batch->date),
                                   count_cell(static_cast<std::size_t>(bars)), ready_cell(on_shelf, cut),
                                   both_costs(reports::bar_costs(books.shop, books.ledger, batch->key), currency)});
    }
    return list;
}

Listing recipe_list(const Books& books, std::string_view find) {
    const Shop& shop = books.shop;
    const std::string currency = reports::currency_of(shop);
    Listing list{
        .name = say("Recipes"),
        .table = {.title = say("Recipes"),
                  .columns = {{say("name")},
                              {say("oils, kg"), Align::right},
                              {say("superfat"), Align::right},
                              {say("lye, g"), Align::right},
                              {say("bars"), Align::right},
                              {say("last cost of a bar, {currency}", arg("currency", currency)), Align::right}},
                  .note = say("For one loaf. The lye is a check, not a licence: the supplier's own value wins.")},
        .empty = say("No recipe yet. Write down one you make: oils and weights; the lye is worked out beside it for "
                     "you to check against the supplier's own value.")};
    std::vector<const Recipe*> recipes;
    for (const Recipe& recipe : shop.all<Recipe>())
        if (holds({recipe.name, recipe.code}, find)) recipes.push_back(&recipe);
    std::ranges::stable_sort(recipes, {}, [](const Recipe* recipe) { return recipe->name; });
    const auto batches = newest_first<Batch>(shop, books.as_of());
    for (const Recipe* recipe : recipes) {
        const LyeNeed need = lye_need(shop, *recipe);
        const auto last = std::ranges::find(batches, recipe->key, &Batch::recipe);
        const auto grams = [](Quantity mass) { return static_cast<double>(mass.in_base()) / 1e3; };
        const double kg = grams(need.oils) / 1e3;
        list.rows.push_back(ref(*recipe));
        list.table.rows.push_back(
            {words_cell(recipe->name), number_cell(kg, reports::shown_number(kg)),
             number_cell(number(recipe->superfat), reports::shown_percent(number(recipe->superfat))),
             need.lye ? number_cell(grams(*need.lye), reports::shown_number(grams(*need.lye))) : no_cell(),
             count_cell(static_cast<std::size_t>(std::max(0, recipe->bars_per_loaf))),
             last == batches.end() ? no_cell()
                                   : both_costs(reports::bar_costs(books.shop, books.ledger, (*last)->key), currency)});
    }
    return list;
}

Listing shelf_list(const Books& books, std::string_view find) {
    const Shop& shop = books.shop;
    Listing list{.name = say("Curing shelf"),
                 .table = {.title = say("Curing shelf"),
                           .columns = {{say("lot")},
                                       {say("bar")},
                                       {say("bars"), Align::right},
                                       {say("state")},
                                       {say("weight now, g"), Align::right},
                                       {say("not wrapped"), Align::right}}},
                 .empty = say("No bars on the shelf. Cut a batch, and its bars stand here until they are sold.")};
    for (const ShelfLot& lot : shelf({shop, books.ledger}).lots) {
        const std::string code = reports::called(shop, lot.lot);
        const std::string bar = reports::called(shop, lot.bar);
        if (!holds({code, bar}, find)) continue;
        const double weight = lot.weight ? number(lot.weight->per_bar) / 1e3 : 0;
        list.rows.push_back(ref(*shop.find(lot.lot)));
        list.table.rows.push_back({words_cell(code), words_cell(bar),
                                   count_cell(static_cast<std::size_t>(whole_bars(lot.bars))),
                                   words_cell(bar_state_words(books, lot)),
                                   lot.weight ? number_cell(weight, reports::shown_number(weight)) : no_cell(),
                                   count_cell(static_cast<std::size_t>(not_wrapped(books, lot.lot)))});
    }
    return list;
}

Listing plan_list(const Books& books, std::string_view find) {
    const Shop& shop = books.shop;
    Listing list{.name = say("Plans"),
                 .table = {.title = say("Loaves planned"),
                           .columns = {{say("to be poured")},
                                       {say("bar")},
                                       {say("recipe")},
                                       {say("loaves"), Align::right},
                                       {say("decided")}}},
                 .empty = say("Nothing is planned. Put down what you mean to pour, and what runs short is told in "
                              "time.")};
    std::vector<const Plan*> plans;
    for (const Plan& plan : shop.all<Plan>())
        if (plan.date >= books.as_of() && plan.noted <= books.as_of()) plans.push_back(&plan);
    std::ranges::stable_sort(plans, {}, [](const Plan* plan) { return plan->date; });
    for (const Plan* plan : plans) {
        const std::string bar = reports::called(shop, plan->bar);
        const std::string recipe = reports::called(shop, plan->recipe);
        if (!holds({bar, recipe}, find)) continue;
        list.rows.push_back(ref(*plan));
        list.table.rows.push_back({day_cell(plan->date), words_cell(bar), words_cell(recipe),
                                   count_cell(static_cast<std::size_t>(std::max(0, plan->loaves))),
                                   day_cell(plan->noted)});
    }
    return list;
}

Listing wrapping_list(const Books& books, std::string_view find) {
    const Shop& shop = books.shop;
    Listing list{.name = say("Wrapped"),
                 .table = {.title = say("Wrapped"),
                           .columns = {{say("on")},
                                       {say("lot")},
                                       {say("bar")},
                                       {say("bars"), Align::right},
                                       {say("time"), Align::right}}},
                 .empty = say("Nothing wrapped yet. Choose bars on the curing shelf and wrap them.")};
    for (const Wrapping* each : newest_first<Wrapping>(shop, books.as_of())) {
        const Lot* lot = shop.find(each->lot);
        if (lot == nullptr) continue;
        const std::string bar = reports::called(shop, lot->material);
        if (!holds({lot->code, bar}, find)) continue;
        list.rows.push_back(ref(*each));
        list.table.rows.push_back(
            {day_cell(each->date), words_cell(lot->code), words_cell(bar),
             count_cell(static_cast<std::size_t>(std::max(0, each->bars))),
             each->time ? number_cell(number(each->time->time), reports::shown_minutes(number(each->time->time)))
                        : no_cell()});
    }
    return list;
}

reports::Table lye_table(const Shop& shop, const Recipe& recipe) {
    reports::Table table{
        .title = say("One loaf"),
        .columns = {
            {say("what")}, {say("how much"), Align::right}, {say("saponification value, mg KOH a g"), Align::right}}};
    for (const RecipePart& part : shop.all<RecipePart>()) {
        if (part.head != recipe.key) continue;
        const Material* material = shop.find(part.material);
        if (material == nullptr) continue;
        const auto amount = part_amount(recipe, part);
        const auto held = amount ? as_held(*material, *amount) : std::nullopt;
        const double value = material->saponification ? number(*material->saponification) : 0;
        table.rows.push_back({words_cell(material->name), held ? held_cell(*material, held->in_base()) : no_cell(),
                              material->saponification ? number_cell(value, reports::shown_number(value)) : no_cell()});
    }
    const LyeNeed need = lye_need(shop, recipe);
    const auto add = [&](std::string what, Quantity mass) {
        table.rows.push_back({words_cell(std::move(what)),
                              number_cell(static_cast<double>(mass.in_base()), reports::shown_quantity(mass)),
                              no_cell()});
    };
    if (need.lye && !need.sodium.weighed.is_zero()) add(say("sodium hydroxide, worked out"), need.sodium.weighed);
    if (need.lye && !need.potassium.weighed.is_zero())
        add(say("potassium hydroxide, worked out"), need.potassium.weighed);
    if (need.water) add(say("water, worked out"), *need.water);
    return table;
}

std::string bench_state(const Books& books) {
    const Shelf on_shelf = shelf({books.shop, books.ledger});
    const auto curing = static_cast<std::uint64_t>(whole_bars(on_shelf.bars(BarState::in_cure)));
    std::size_t held = 0;
    const ShelfLot* next = nullptr;
    for (const ShelfLot& lot : on_shelf.lots) {
        if (lot.state == BarState::held) ++held;
        if (next == nullptr && lot.state == BarState::in_cure) next = &lot;
    }
    std::string state =
        next == nullptr
            ? say("No bars in cure.")
            : say_count("One bar in cure, ready on {day}.", "{count} bars in cure, the next {next} ready on {day}.",
                        curing, arg("next", whole_bars(next->bars)), arg("day", reports::shown_date(next->ready)));
    if (held > 0) state += " " + say_count("One batch on hold.", "{count} batches on hold.", held);
    return state;
}

}  // namespace dyestead::gui
