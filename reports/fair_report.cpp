#include "reports/fair_report.h"

#include <algorithm>
#include <cmath>

#include "reports/add_blocks.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

Cell count(int number) {
    return {.shown = fmt::to_string(number), .number = number};
}

Cell bars(double number) {
    return {.shown = shown_fixed(number, 1), .number = number};
}

std::optional<double> money(std::optional<Money> amount) {
    return amount ? std::optional{number(*amount)} : std::nullopt;
}

std::string whole_bars(double number) {
    return fmt::to_string(static_cast<std::int64_t>(std::ceil(number - 1e-9)));
}

std::string lots_of(const Shop& shop, const TakeBars& bar) {
    std::string codes;
    for (const Key<Lot> lot : bar.lots) codes += (codes.empty() ? "" : ", ") + shop.find(lot)->code;
    return codes;
}

std::string remark(const TakeBars& bar) {
    if (bar.no_price) return tr("no price on the list");
    if (bar.no_cost) return tr("what making it again costs is not known");
    if (bar.days_on_record == 0) return tr("never taken before");
    if (bar.at_least_only) return tr("sold out every time: at least so many");
    return {};
}

int bars_to_take(const FairPlan& plan) {
    int all = 0;
    for (const TakeBars& each : plan.bars) all += each.take;
    return all;
}

// Whether standing there again is worth it, by the hour at the stall and what an hour is to bring.
std::string go_again(const Fair& fair, const FairResult& result, const std::string& currency) {
    if (!result.per_stall_hour || !result.target) return {};
    const auto earned = arg("earned", shown_money(*result.per_stall_hour, currency));
    const auto target = arg("target", shown_money(*result.target, currency));
    if (fair.ended != FairEnded::as_usual)
        return say("It was cut short, so it says little of the next one: an hour there earned {earned}.", earned);
    return *result.per_stall_hour >= *result.target
               ? say("Go again: with the making paid, an hour there earned {earned}, and you want {target}.", earned,
                     target)
               : say("Think twice before going again: with the making paid, an hour there earned {earned}, and you "
                     "want "
                     "{target}.",
                     earned, target);
}

// Until when a loaf can still be poured and be cured in time; blank once that is past.
std::string pour_by(const TakeBars& bar, Day today) {
    return bar.pour_by && *bar.pour_by >= today ? shown_date(*bar.pour_by) : std::string{};
}

}  // namespace

Document fair_plan_report(const Shop& shop, const Ledger& ledger, const FairPlan& plan) {
    const Fair& fair = *shop.find(plan.fair);
    const std::string currency = currency_of(shop);
    Document document = begin_document(
        shop, ledger, "fair-plan",
        say("What to take to the {fair}, {day}", arg("fair", fair.name), arg("day", shown_date(fair.date))));
    const int taken = bars_to_take(plan);
    if (taken == 0)
        document.blocks.push_back(Headline{tr("Nothing that is cured by that day would earn its place on the table.")});
    else if (!plan.break_even)
        document.blocks.push_back(
            Headline{say("Take {bars} bars; at these prices no number of them covers the stall.", arg("bars", taken))});
    else
        document.blocks.push_back(
            Headline{say("Take {bars} bars; about {sold} should sell, and {even} cover the stall.", arg("bars", taken),
                         arg("sold", whole_bars(plan.expected_bars)), arg("even", whole_bars(*plan.break_even)))});

    Table table{.title = tr("By kind"),
                .columns = {{tr("bar")},
                            {tr("there")},
                            {tr("in cure")},
                            {tr("wanted")},
                            {tr("take")},
                            {tr("of these sell")},
                            {tr("fairs on record")},
                            {tr("more if poured by")},
                            {tr("from the lots")},
                            {tr("remark")}}};
    for (const std::size_t i : {1U, 2U, 3U, 4U, 5U, 6U}) table.columns[i].align = Align::right;
    for (const TakeBars& each : plan.bars)
        table.rows.push_back({Cell{.shown = called(shop, each.bar)}, count(each.there), count(each.in_cure),
                              bars(each.expected), count(each.take), bars(each.expected_sold),
                              count(each.days_on_record), Cell{.shown = pour_by(each, ledger.as_of)},
                              Cell{.shown = lots_of(shop, each)}, Cell{.shown = remark(each)}});
    document.blocks.push_back(std::move(table));
    const auto fixed = arg("fixed", shown_money(plan.fixed, currency));
    add_paragraph(
        document,
        plan.break_even_full
            ? say("Fee and travel are {fixed}. {even_full} bars would pay the {hours} at the stall as well.", fixed,
                  arg("even_full", whole_bars(*plan.break_even_full)), arg("hours", shown_hours(plan.own_hours)))
            : say("Fee and travel are {fixed}.", fixed));
    document.blocks.push_back(Paragraph{
        say("Reckoned from fairs stood to their end, over {hours}; fairs of this name were {busy} times as busy as all "
            "fairs. How many will come is a guess; what sold out says only that at least so many were wanted.",
            arg("hours", shown_hours(plan.hours)), arg("busy", shown_number(plan.busy))),
        Tone::small});
    document.figures = {{"fixed", plan.fixed},
                        {"take", taken},
                        {"expected_bars", plan.expected_bars},
                        {"expected_earned", plan.expected_earned},
                        {"break_even", plan.break_even},
                        {"break_even_full", plan.break_even_full}};
    return document;
}

Document fair_result_report(const Shop& shop, const Ledger& ledger, const FairResult& result, const FairPlan& before) {
    const Fair& fair = *shop.find(result.fair);
    const std::string currency = currency_of(shop);
    Document document =
        begin_document(shop, ledger, "fair-result",
                       say("How the {fair} went, {day}", arg("fair", fair.name), arg("day", shown_date(fair.date))));
    if (result.per_hour)
        document.blocks.push_back(
            Headline{say("{sold} bars sold for {takings}; an hour of making and selling together earned {hour}.",
                         arg("sold", result.sold), arg("takings", shown_money(result.takings, currency)),
                         arg("hour", shown_money(*result.per_hour, currency)))});
    else
        document.blocks.push_back(Headline{say("{sold} bars sold for {takings}.", arg("sold", result.sold),
                                               arg("takings", shown_money(result.takings, currency)))});
    Table table{.title = tr("By kind"),
                .columns = {{tr("bar")},
                            {tr("advised"), Align::right},
                            {tr("taken"), Align::right},
                            {tr("back"), Align::right},
                            {tr("sold"), Align::right},
                            {tr("expected to sell"), Align::right},
                            {say("price, {currency}", arg("currency", currency)), Align::right},
                            {currency, Align::right}}};
    for (const FairResult::Line& line : result.lines) {
        const bool priced = line.price > 0;  // nothing asked is nothing on record, not a gift
        const auto planned = std::ranges::find(before.bars, line.bar, &TakeBars::bar);
        const bool known = planned != before.bars.end();
        table.rows.push_back({Cell{.shown = called(shop, line.bar)}, known ? count(planned->take) : none_cell(),
                              count(line.taken), count(line.back), count(line.taken - line.back),
                              known ? number_cell(planned->expected_sold) : none_cell(),
                              money_cell(priced ? std::optional{line.price} : std::nullopt, currency),
                              money_cell(priced ? std::optional{line.takings()} : std::nullopt, currency)});
    }
    table.note =
        tr("Advised and expected to sell: as the plan stood the day before, the latter of what was advised. What "
           "sold out may have been wanted more.");
    document.blocks.push_back(std::move(table));

    Table sums{.title = say("What it came to, {currency}", arg("currency", currency)),
               .columns = {{tr("what")}, {currency, Align::right}}};
    const auto row = [&](std::string what, std::optional<double> money) {
        sums.rows.push_back({Cell{.shown = std::move(what)}, money_cell(money, currency)});
    };
    row(tr("takings"), result.takings);
    row(tr("fees of being paid, and bags"), -result.fees);
    row(tr("stall and travel"), -result.fixed);
    row(tr("what the bars sold had cost, without your hours"), -result.making_cash);
    row(tr("left for your hours, sales tax paid"), result.left);
    row(tr("should be in the tin"), money(result.tin.expected));
    row(tr("counted in the tin"), money(result.tin.counted));
    row(tr("more (or less) in the tin than there should be"), money(result.tin.difference));
    document.blocks.push_back(std::move(sums));
    if (auto again = go_again(fair, result, currency); !again.empty())
        document.blocks.push_back(Paragraph{std::move(again)});
    if (result.per_stall_hour)
        document.blocks.push_back(Paragraph{say(
            "{stall} at the stall earned {hour} each once the making is paid at your target.",
            arg("stall", shown_hours(result.own_hours)), arg("hour", shown_money(*result.per_stall_hour, currency)))});
    document.figures = {{"sold", result.sold},
                        {"takings", result.takings},
                        {"planned.take", static_cast<double>(bars_to_take(before))},
                        {"planned.expected_sold", before.expected_bars},
                        {"tin.expected", money(result.tin.expected)},
                        {"tin.counted", money(result.tin.counted)},
                        {"tin.difference", money(result.tin.difference)},
                        {"earned_per_stall_hour", result.per_stall_hour},
                        {"earned_per_hour", result.per_hour}};
    return document;
}

}  // namespace dyestead::reports
