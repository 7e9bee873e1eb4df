#include "reports/hours_report.h"

#include <array>

#include "domain/ledger/hours.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/statement_parts.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/statement_words.h"

namespace dyestead::reports {
namespace {

double minutes(Minutes time) {
    return static_cast<double>(time.in_millionths()) / 1e6;
}

}  // namespace

Document hours_report(const Shop& shop, const Ledger& ledger, Period period) {
    const std::string currency = currency_of(shop);
    Document document =
        begin_document(shop, ledger, "hours",
                       say("Your own hours from {first} to {last}", arg("first", shown_date(period.first)),
                           arg("last", shown_date(period.last))));
    Table table{.title = tr("By stage of the work"),
                .columns = {{tr("at what")},
                            {tr("who")},
                            {tr("how long"), Align::right},
                            {say("{currency} at what an hour is to bring", arg("currency", currency)), Align::right}},
                .emphasise_last_row = true,
                .note = tr("People who are paid are not in here: their time is a wage.")};
    const auto add = [&](std::string what, std::string who, Minutes time, Money labour) {
        table.rows.push_back({Cell{.shown = std::move(what)}, Cell{.shown = std::move(who)},
                              Cell{.shown = shown_minutes(minutes(time)), .number = hours(time)},
                              money_cell(units(labour), currency)});
    };
    std::array<Minutes, kStages> by_stage{};
    Minutes total;
    Money labour;
    for (const StageHours& line : dyestead::hours(shop, ledger, period)) {
        add(name_of(line.stage), line.who ? called(shop, *line.who) : not_known(), line.time, line.labour);
        by_stage[static_cast<std::size_t>(line.stage)] += line.time;
        total += line.time;
        labour += line.labour;
    }
    add(tr("in all"), {}, total, labour);
    for (std::size_t i = 0; i < kStages; ++i)
        document.figures.push_back({fmt::format("hours.{}", key_of(static_cast<Stage>(i))), hours(by_stage[i])});
    document.figures.push_back({"hours.total", hours(total)});
    document.figures.push_back({"labour", units(labour)});
    document.blocks.push_back(
        Headline{say("{time} in all, worth {money} at what an hour is to bring.",
                     arg("time", shown_minutes(minutes(total))), arg("money", shown_money(labour, currency)))});
    document.blocks.push_back(std::move(table));
    document.blocks.push_back(tie_line(shop, ledger, period));
    return document;
}

}  // namespace dyestead::reports
