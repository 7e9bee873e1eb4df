#include <algorithm>
#include <cmath>

#include "domain/decisions/fair_plan.h"
#include "domain/ledger/in_force.h"
#include "reports/cells.h"
#include "reports/sheets/sheet.h"
#include "reports/sheets/sheet_parts.h"
#include "reports/words/caution_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

constexpr std::size_t kSpareLines = 2;
constexpr std::size_t kLinesOfAnEmptyShop = 8;

Cell count(int number) {
    return {.shown = fmt::to_string(number), .number = number};
}

Cell price_of(const Shop& shop, Key<Material> bar, Day day) {
    const auto shelf = shelf_price_in_force(shop, bar, day);
    return money_cell(shelf ? std::optional{number(*shelf)} : std::nullopt, currency_of(shop));
}

Table bars(const Shop& shop, const Ledger& ledger, const FairPlan* plan, Day day) {
    Table table{
        .title = tr("Bars"),
        .columns = {{tr("bar")},
                    {.heading = say("price, {currency}", arg("currency", currency_of(shop))), .align = Align::right},
                    {.heading = tr("there"), .align = Align::right},
                    {.heading = tr("suggested"), .align = Align::right},
                    {.heading = tr("taken"), .room = 18},
                    {.heading = tr("back home"), .room = 18}}};
    if (plan != nullptr) {
        for (const TakeBars& each : plan->bars)
            table.rows.push_back({Cell{.shown = called(shop, each.bar)}, price_of(shop, each.bar, day),
                                  count(each.there), count(each.take), Cell{}, Cell{}});
    } else {
        table.columns.erase(table.columns.begin() + 2, table.columns.begin() + 4);
        for (const RecipeColouring& line : shop.all<RecipeColouring>())
            table.rows.push_back(
                {Cell{.shown = called(shop, line.bar)}, price_of(shop, line.bar, ledger.as_of), Cell{}, Cell{}});
        std::ranges::stable_sort(table.rows, {}, [](const auto& row) { return row.front().shown; });
        if (table.rows.empty()) table.columns.front().room = kRoomForWords;
    }
    add_empty_rows(table, table.rows.empty() ? kLinesOfAnEmptyShop : kSpareLines);
    table.note = tr("Pack the first cured first.");
    return table;
}

std::string suggestion(const FairPlan& plan) {
    int take = 0;
    for (const TakeBars& each : plan.bars) take += each.take;
    if (!plan.break_even)
        return say_count("One bar is suggested.", "{count} bars are suggested.", static_cast<std::uint64_t>(take));
    return say_count("One bar is suggested; {even} sold pay for stall and travel.",
                     "{count} bars are suggested; {even} sold pay for stall and travel.",
                     static_cast<std::uint64_t>(take),
                     arg("even", static_cast<std::int64_t>(std::ceil(*plan.break_even - 1e-9))));
}

}  // namespace

Sheet fair_sheet(const Shop& shop, const Ledger& ledger, const Fair* fair) {
    const Day day = fair == nullptr ? ledger.as_of : fair->date;
    std::optional<FairPlan> plan;
    if (fair != nullptr) plan = fair_plan(shop, ledger, fair->key);
    Sheet sheet{.title = fair == nullptr
                             ? tr("Fair sheet")
                             : say("Fair sheet: {fair}, {day}", arg("fair", fair->name), arg("day", shown_date(day)))};
    if (plan) {
        sheet.blocks.push_back(Paragraph{suggestion(*plan)});
    } else {
        Table which{.title = {},
                    .columns = {{.heading = tr("fair"), .room = 2 * kRoomForWords},
                                {.heading = tr("on"), .room = kRoomForDay}}};
        add_empty_rows(which, 1);
        sheet.blocks.push_back(std::move(which));
    }
    sheet.blocks.push_back(cautions(stall_cautions()));
    sheet.blocks.push_back(bars(shop, ledger, plan ? &*plan : nullptr, day));
    sheet.blocks.push_back(
        questions(tr("The tin and the day"),
                  {tr("Change in the tin at the start"), tr("Cash in the tin at the end, the change included"),
                   tr("Taken by card"), tr("Card payments, how many"), tr("Bars home in all"),
                   tr("Bundles sold, and what was let off"), tr("Who was there, and how long with packing and the way"),
                   tr("Open from, to"), tr("Weather; cut short?")}));
    sheet.blocks.push_back(Paragraph{
        tr("Typed in at the Stall with \"Count back\": cash, card and bars home in all are enough."), Tone::small});
    return sheet;
}

}  // namespace dyestead::reports
