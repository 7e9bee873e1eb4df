#include <map>

#include "domain/facts/lines_of.h"
#include "domain/text/amounts.h"
#include "reports/sheets/sheet.h"
#include "reports/sheets/sheet_parts.h"
#include "reports/words/caution_words.h"
#include "reports/words/method_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

std::vector<const MethodStep*> steps_of(const Shop& shop, const Method& method) {
    const LinesOf<MethodStep> lines{shop};
    const auto found = lines(method.key);
    return {found.begin(), found.end()};
}

Paragraph all_cautions(const Shop& shop, const Method* method) {
    std::vector<std::string> said = vat_cautions();
    std::map<Caution, std::string> things;
    if (method != nullptr)
        for (const MethodStep* step : steps_of(shop, *method)) {
            std::string& all = things[step->caution];
            all += (all.empty() ? "" : "; ") + step->what;
        }
    for (const auto& [caution, what] : things) said.push_back(caution_sentence(caution, what));
    return cautions(said);
}

Table which_vat() {
    Table table{.title = tr("Which vat"),
                .columns = {{.heading = tr("begun on"), .room = kRoomForDay},
                            {.heading = tr("who"), .room = kRoomForName},
                            {.heading = tr("leaf, herb or root of which bed"), .room = kRoomForWords},
                            {.heading = tr("how much"), .room = kRoomForName}}};
    add_empty_rows(table, 1);
    return table;
}

std::string per(const MethodUse& use) {
    const auto amount = arg("amount", print(use.amount));
    switch (use.per) {
        case Per::vat: return say("{amount} for the vat", amount);
        case Per::kg: return say("{amount} for each kg of harvest", amount);
        case Per::litre: return say("{amount} for each litre of water", amount);
    }
    return {};
}

Table what_goes_in(const Shop& shop, const Method* method) {
    Table table{.title = tr("What goes in"),
                .columns = {{.heading = tr("what"), .room = method == nullptr ? kRoomForWords : 0},
                            {tr("your method says")},
                            {.heading = tr("how much"), .room = kRoomForName},
                            {.heading = tr("from which lot"), .room = kRoomForName}}};
    if (method == nullptr) {
        table.columns.erase(table.columns.begin() + 1);
        add_empty_rows(table, 4);
        return table;
    }
    const LinesOf<MethodUse> lines{shop};
    for (const MethodUse* use : lines(method->key))
        table.rows.push_back({Cell{.shown = called(shop, use->material)}, Cell{.shown = per(*use)}, Cell{}, Cell{}});
    add_empty_rows(table, table.rows.empty() ? 4 : 1);
    return table;
}

std::string how_often(const MethodStep& step) {
    std::string targets = step_targets(step);
    if (step.times <= 1) return targets;
    const auto times = static_cast<std::uint64_t>(step.times);
    if (targets.empty()) return say_count("once", "{count} times", times);
    return say_count("once, {targets}", "{count} times, each {targets}", times, arg("targets", targets));
}

Table steps(const Shop& shop, const Method* method) {
    Table table{.title = tr("Steps as they are done; what was not measured stays blank"),
                .columns = {{.heading = tr("step"), .room = method == nullptr ? 2 * kRoomForWords : 0},
                            {tr("your method says")},
                            {.heading = tr("from"), .room = kRoomForTime},
                            {.heading = tr("to"), .room = kRoomForTime},
                            {.heading = tr("°C"), .room = kRoomForFigure},
                            {.heading = tr("pH"), .room = kRoomForFigure}}};
    if (method == nullptr) {
        table.columns.erase(table.columns.begin() + 1);
        add_empty_rows(table, 10);
        return table;
    }
    for (const MethodStep* step : steps_of(shop, *method))
        table.rows.push_back(
            {Cell{.shown = step->what}, Cell{.shown = how_often(*step)}, Cell{}, Cell{}, Cell{}, Cell{}});
    add_empty_rows(table, table.rows.empty() ? 10 : 1);
    return table;
}

}  // namespace

Sheet vat_sheet(const Shop& shop, const Method* method) {
    Sheet sheet{.title = method == nullptr ? tr("Vat sheet") : say("Vat sheet: {method}", arg("method", method->name))};
    sheet.blocks.push_back(which_vat());
    sheet.blocks.push_back(all_cautions(shop, method));
    sheet.blocks.push_back(what_goes_in(shop, method));
    sheet.blocks.push_back(steps(shop, method));
    sheet.blocks.push_back(
        questions(tr("Five answers are enough to type it in"),
                  {tr("How much leaf, herb or root went in?"),
                   tr("Which water, and how many bottles or buckets were emptied?"), tr("How often was it washed?"),
                   tr("How long were hands on it, all together?"), tr("How much powder came, once dry?")}));
    sheet.blocks.push_back(
        Paragraph{tr("Typed in at the Vat with \"New vat, or from a sheet\"; the powder later with \"Dry and weigh\"."),
                  Tone::small});
    Table different{
        .title = {}, .columns = {{.heading = tr("what was different this time"), .room = 2 * kRoomForWords}}};
    add_empty_rows(different, 2);
    sheet.blocks.push_back(std::move(different));
    return sheet;
}

}  // namespace dyestead::reports
