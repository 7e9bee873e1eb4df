#include "reports/verdict_tables.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

// The bar without colour is the base of all three; what is beyond it is the colour's.
StackedBar stacked(const std::string& label, const Alternative& bar, const Alternative& base,
                   const std::string& currency) {
    const auto over = [&](std::optional<double> Alternative::*part) {
        return (bar.*part).value_or(0) - (base.*part).value_or(0);
    };
    StackedBar out{
        .label = label,
        .values = {base.materials_per_bar.value_or(0), base.energy_per_bar.value_or(0),
                   base.overhead_per_bar.value_or(0), over(&Alternative::cash_cost_per_bar),
                   bar.fees_per_bar.value_or(0), base.labour_per_bar.value_or(0), over(&Alternative::labour_per_bar)},
        .shown = {}};
    double total = 0;
    for (const double value : out.values) {
        out.shown.push_back(bare_money(value, currency));
        total += value;
    }
    out.total_shown = bare_money(total, currency);
    if (bar.price_per_bar) {
        out.mark =
            BarMark{*bar.price_per_bar, say("price {money}", arg("money", bare_money(*bar.price_per_bar, currency)))};
    }
    return out;
}

std::string cost_with_time(const Alternative& bar, const std::string& currency) {
    const auto& cost = bar.full_cost_per_bar ? bar.full_cost_per_bar : bar.cash_cost_per_bar;
    return cost ? shown_money(*cost + bar.fees_per_bar.value_or(0), currency) : not_known();
}

std::string price(const Alternative& bar, const std::string& currency) {
    return bar.price_per_bar ? shown_money(*bar.price_per_bar, currency) : not_known();
}

std::string sentence(const VerdictFigures& all, const std::string& currency) {
    const auto grown = arg("grown", cost_with_time(all.home, currency));
    const auto plain = arg("plain", cost_with_time(all.plain, currency));
    const auto grown_price = arg("grown_price", price(all.home, currency));
    const auto plain_price = arg("plain_price", price(all.plain, currency));
    if (!all.bought.cash_cost_per_bar) {
        return say(
            "With fees and your time a grown bar costs {grown} and brings {grown_price}, a plain one costs "
            "{plain} and brings {plain_price}.",
            grown, grown_price, plain, plain_price);
    }
    return say(
        "With fees and your time a grown bar costs {grown} and brings {grown_price}, a bought-in one costs "
        "{bought} and brings {bought_price}, a plain one costs {plain} and brings {plain_price}.",
        grown, grown_price, arg("bought", cost_with_time(all.bought, currency)),
        arg("bought_price", price(all.bought, currency)), plain, plain_price);
}

}  // namespace

std::optional<Chart> cost_chart(const Shop& shop, const VerdictFigures& figures) {
    if (!figures.plain.cash_cost_per_bar || !figures.home.cash_cost_per_bar) return std::nullopt;
    const std::string currency = currency_of(shop);
    StackedBars data{.value_label = say("{currency} a bar", arg("currency", currency)),
                     .series = {{tr("materials")},
                                {tr("energy")},
                                {tr("running costs")},
                                {tr("the colour")},
                                {tr("fees")},
                                {tr("time at the bench"), SeriesKind::time},
                                {tr("time for the colour"), SeriesKind::time}},
                     .bars = {}};
    data.bars.push_back(stacked(tr("our own"), figures.home, figures.plain, currency));
    if (figures.bought.cash_cost_per_bar)
        data.bars.push_back(stacked(tr("bought in"), figures.bought, figures.plain, currency));
    data.bars.push_back(stacked(tr("plain"), figures.plain, figures.plain, currency));
    return Chart{.title = tr("What one bar costs, against its price"),
                 .sentence = sentence(figures, currency),
                 .data = std::move(data)};
}

}  // namespace dyestead::reports
