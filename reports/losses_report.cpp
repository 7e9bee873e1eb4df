#include "reports/losses_report.h"

#include "domain/facts/material_amount.h"
#include "domain/ledger/losses.h"
#include "domain/text/amounts.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/statement_parts.h"
#include "reports/words/fact_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/statement_words.h"

namespace dyestead::reports {
namespace {

Cell amount(const Shop& shop, const LossLine& line) {
    if (line.quantity == 0) return {};
    const Material& material = shop.all<Material>()[line.material];
    return {.shown = shown_quantity({kind_of(material.held_as), line.quantity})};
}

}  // namespace

Document losses_report(const Shop& shop, const Ledger& ledger, Period period) {
    const std::string currency = currency_of(shop);
    Document document =
        begin_document(shop, ledger, "losses",
                       say("Lost and given away from {first} to {last}, at cost without your own hours",
                           arg("first", shown_date(period.first)), arg("last", shown_date(period.last))));
    const auto money = arg("currency", currency);
    Table table{.title = tr("Line by line"),
                .columns = {{tr("day")},
                            {tr("why")},
                            {tr("what")},
                            {tr("how much"), Align::right},
                            {say("{currency} without your hours", money), Align::right},
                            {say("{currency} with your hours", money), Align::right}},
                .emphasise_last_row = true,
                .note = tr("Loss that is usual stays in the cost of what is left, so that its line may cost nothing.")};
    std::array<Cost, kLossKinds> by_kind{};
    Cost lost;
    Cost given;
    const auto add = [&](std::string day, std::string why, std::string what, Cell how_much, const Cost& cost) {
        table.rows.push_back({Cell{.shown = std::move(day)}, Cell{.shown = std::move(why)},
                              Cell{.shown = std::move(what)}, std::move(how_much),
                              money_cell(units(cost.cash()), currency), money_cell(units(cost.full()), currency)});
    };
    for (const LossLine& line : losses(shop, ledger, period)) {
        add(print(line.day), name_of(line.kind), fact_words(shop, line.fact), amount(shop, line), line.cost);
        by_kind[static_cast<std::size_t>(line.kind)] += line.cost;
        (is_gift(line.kind) ? given : lost) += line.cost;
    }
    add({}, tr("in all"), {}, {}, lost + given);
    for (std::size_t i = 0; i < kLossKinds; ++i)
        add_figures(document, fmt::format("losses.{}", key_of(static_cast<LossKind>(i))), two(by_kind[i]));
    add_figures(document, "lost", two(lost));
    add_figures(document, "gifts", two(given));
    document.blocks.push_back(Headline{
        say("{lost} was lost beyond the usual and {given} given away, at cost without your own hours.",
            arg("lost", shown_money(lost.cash(), currency)), arg("given", shown_money(given.cash(), currency)))});
    document.blocks.push_back(std::move(table));
    document.blocks.push_back(tie_line(shop, ledger, period));
    return document;
}

}  // namespace dyestead::reports
