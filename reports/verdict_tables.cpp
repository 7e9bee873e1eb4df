#include "reports/verdict_tables.h"

#include "domain/text/amounts.h"
#include "reports/cells.h"
#include "reports/words/breakeven_words.h"
#include "reports/words/doubt_words.h"
#include "reports/words/improve_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/verdict_within.h"

namespace dyestead::reports {
namespace {

Cell text(std::string shown) {
    return {.shown = std::move(shown)};
}

std::string colouring_name(Colouring colouring) {
    switch (colouring) {
        case Colouring::plain: return tr("plain");
        case Colouring::bought: return tr("bought in");
        case Colouring::own: return tr("our own");
    }
    return {};
}

}  // namespace

Table what_would_turn_it(const Shop& shop, const Verdict& verdict) {
    const VerdictFigures& figures = verdict.figures;
    const Within within = within_reach(shop, verdict);
    Table table{.title = tr("What would turn it: grown and bought-in come out even"),
                .columns = {{tr("if this alone changed")},
                            {tr("now"), Align::right},
                            {tr("our time counted")},
                            {tr("our time not counted")}}};
    const auto& hurdle = figures.extra_dye_hour.hurdle;
    if (hurdle && verdict.hourly_target && *hurdle > *verdict.hourly_target) {
        table.note =
            say("Our time is counted here at the {target} wanted for an hour; the lines at the top count it at what "
                "an hour more of soap would bring, {hurdle}.",
                arg("target", shown_money(*verdict.hourly_target, within.currency)),
                arg("hurdle", shown_money(*hurdle, within.currency)));
    }
    for (const Lever lever : {Lever::premium, Lever::hourly_target, Lever::yield, Lever::harvest_per_vat,
                              Lever::minutes_per_vat, Lever::bought_price}) {
        // Memory was not asked for kilos.
        if (verdict.from_memory && (lever == Lever::yield || lever == Lever::harvest_per_vat)) continue;
        Cell now{.shown = not_known(), .no_value = true};
        if (figures.model && (lever != Lever::hourly_target || verdict.hourly_target))
            now = {.shown = lever_today(lever, within), .number = lever_value(lever, within.today)};
        table.rows.push_back({text(lever_name(lever)), now,
                              text(breakeven_words(lever, breakeven_of(lever, figures.breakeven), within)),
                              text(breakeven_words(lever, breakeven_of(lever, figures.breakeven_cash), within))});
    }
    return table;
}

Table what_matters(const Shop& shop, const Verdict& verdict) {
    const std::string currency = currency_of(shop);
    Table table{.title = say("What matters most: {currency} a season, grown less bought", arg("currency", currency)),
                .columns = {{tr("if this alone were so")},
                            {tr("as in a bad year"), Align::right},
                            {tr("as in a usual one"), Align::right},
                            {tr("as in a good one"), Align::right},
                            {tr("knowing it first is worth"), Align::right},
                            {tr("one more record narrows it by"), Align::right}},
                .note = say("An hour counts here at what it has to bring, {hurdle}. A bad year is worse than nine in "
                            "ten, a good one better than nine in ten. One more record: a vat, a shade test, a "
                            "planting, whichever tells of it.",
                            arg("hurdle", shown_money(verdict.figures.extra_dye_hour.hurdle.value_or(0), currency)))};
    for (const Matter& matter : verdict.doubt.matters) {
        table.rows.push_back(
            {text(doubt_of_words(matter.of)), money_cell(matter.season.bad, currency),
             money_cell(matter.season.usual, currency), money_cell(matter.season.good, currency),
             money_cell(matter.perfect_forecast, currency),
             cell_of(matter.one_more ? std::optional{1 - *matter.one_more} : std::nullopt, shown_percent)});
    }
    return table;
}

Table hours_table(const Shop& shop, const Verdict& verdict) {
    Table table{.title = tr("Where the hours went"),
                .columns = {{tr("at")},
                            {tr("hours"), Align::right},
                            {tr("of all, %"), Align::right},
                            {tr("times a vat"), Align::right}},
                .note = hours_note(verdict)};
    for (const StepHours& step : dye_hours(shop, verdict)) {
        table.rows.push_back({text(hours_at_words(step)), number_cell(step.minutes / 60), number_cell(100 * step.share),
                              step.at == HoursAt::step ? number_cell(step.times) : none_cell()});
    }
    for (const std::size_t column : {1U, 2U, 3U}) line_up(table, column);
    return table;
}

Table vats_table(const Shop& shop, const Verdict& verdict) {
    const std::string currency = currency_of(shop);
    const auto money = arg("currency", currency);
    Table table{.title = tr("The vats"),
                .columns = {{tr("vat")},
                            {tr("begun")},
                            {tr("harvest, kg"), Align::right},
                            {tr("powder, g"), Align::right},
                            {tr("g a kilo"), Align::right},
                            {say("{currency} a gram", money), Align::right},
                            {say("{currency} a gram, time too", money), Align::right},
                            {tr("hours"), Align::right}}};
    bool shared = false;
    for (const VatRow& vat : verdict.vats) {
        shared = shared || vat.shared_plate;
        const bool nothing = !vat.full_cost_per_gram_booked;
        table.rows.push_back(
            {text(called(shop, vat.vat)), text(print(vat.begun)), number_cell(vat.kg), number_cell(vat.grams),
             number_cell(vat.g_per_kg), nothing ? none_cell() : money_cell(vat.cash_cost_per_gram_booked, currency),
             nothing ? none_cell() : money_cell(vat.full_cost_per_gram_booked, currency), number_cell(vat.hours)});
    }
    for (const std::size_t column : {2U, 3U, 4U, 7U}) line_up(table, column);
    table.note =
        shared ? tr("The cost of a gram is the books' own; a vat that gave nothing has none. Hours are those at the "
                    "vat. Where vats dried on one plate, its powder is shared by their harvest.")
               : tr("The cost of a gram is the books' own; a vat that gave nothing has none. Hours are those at the "
                    "vat.");
    return table;
}

Table seasons_table(const Shop& shop, const Verdict& verdict) {
    const std::string currency = currency_of(shop);
    const auto money = arg("currency", currency);
    Table table{.title = tr("The seasons on record"),
                .columns = {{tr("cut in")},
                            {tr("vats"), Align::right},
                            {tr("gave none"), Align::right},
                            {tr("harvest, kg"), Align::right},
                            {tr("powder, g"), Align::right},
                            {tr("g a kilo"), Align::right},
                            {tr("hours"), Align::right},
                            {say("spent, {currency}", money), Align::right},
                            {say("{currency} a gram, time too", money), Align::right},
                            {say("{currency} a bar, grown less bought", money), Align::right}},
                .note = tr("The last column counts an hour at what it has to bring, and the extra on the price as it "
                           "is today.")};
    for (const SeasonRow& season : verdict.seasons) {
        table.rows.push_back({text(fmt::to_string(season.year)), number_cell(season.vats),
                              number_cell(season.failed_vats), number_cell(season.kg), number_cell(season.grams),
                              number_cell(season.g_per_kg), number_cell(season.dye_hours),
                              money_cell(season.cash, currency), money_cell(season.full_cost_per_gram, currency),
                              money_cell(season.full_difference_at_hurdle, currency)});
    }
    for (const std::size_t column : {3U, 4U, 5U, 6U}) line_up(table, column);
    return table;
}

Table sold_table(const Shop& shop, const Verdict& verdict) {
    const std::string currency = currency_of(shop);
    Table table{.title = tr("Sold in the last 12 months, by price"),
                .columns = {{tr("bar")},
                            {say("price, {currency}", arg("currency", currency)), Align::right},
                            {tr("bars sold"), Align::right}}};
    for (const PriceSold& sold : verdict.sold_at) {
        table.rows.push_back(
            {text(colouring_name(sold.colouring)), money_cell(sold.shelf_price, currency), number_cell(sold.bars)});
    }
    return table;
}

}  // namespace dyestead::reports
