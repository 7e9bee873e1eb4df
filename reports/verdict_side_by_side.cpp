#include "reports/cells.h"
#include "reports/verdict_figures.h"
#include "reports/verdict_tables.h"
#include "reports/words/names.h"
#include "reports/words/say.h"

namespace dyestead::reports {
namespace {

using Part = std::optional<double> Alternative::*;

class SideBySide {
public:
    SideBySide(const VerdictFigures& figures, std::string currency)
        : figures_{figures}, currency_{std::move(currency)} {}

    void money(std::string label, Part part) {
        add(std::move(label), part, [&](double units) { return bare_money(units, currency_); });
    }
    void minutes(std::string label, Part part) {
        add(std::move(label), part, [](double minutes) { return shown_fixed(minutes, 1); });
    }

    std::vector<std::vector<Cell>> take() { return std::move(rows_); }

private:
    template <class Shown>
    void add(std::string label, Part part, Shown shown) {
        rows_.push_back({Cell{.shown = std::move(label)}, cell_of(figures_.home.*part, shown),
                         cell_of(figures_.bought.*part, shown), cell_of(figures_.plain.*part, shown)});
    }

    const VerdictFigures& figures_;
    std::string currency_;
    std::vector<std::vector<Cell>> rows_;
};

bool has_sales_tax(const Alternative& bar) {
    return bar.shelf_price_per_bar && bar.price_per_bar && *bar.shelf_price_per_bar > *bar.price_per_bar;
}

}  // namespace

Table side_by_side(const Shop& shop, const VerdictFigures& figures, const std::string& title) {
    const std::string currency = currency_of(shop);
    SideBySide rows{figures, currency};
    rows.money(tr("price on the shelf"), &Alternative::shelf_price_per_bar);
    if (has_sales_tax(figures.plain) || has_sales_tax(figures.home))
        rows.money(tr("price without sales tax"), &Alternative::price_per_bar);
    rows.money(tr("fees of being paid"), &Alternative::fees_per_bar);
    rows.money(tr("materials and bought-in work"), &Alternative::materials_per_bar);
    rows.money(tr("energy"), &Alternative::energy_per_bar);
    rows.money(tr("running costs"), &Alternative::overhead_per_bar);
    rows.money(tr("out of pocket"), &Alternative::cash_cost_per_bar);
    rows.money(tr("left over before our time"), &Alternative::cash_margin_per_bar);
    rows.money(tr("our time"), &Alternative::labour_per_bar);
    rows.money(tr("out of pocket and our time"), &Alternative::full_cost_per_bar);
    rows.money(tr("left over after our time"), &Alternative::full_margin_per_bar);
    rows.minutes(tr("minutes of our time, making"), &Alternative::hands_on_minutes_per_bar);
    rows.money(tr("an hour of making earned"), &Alternative::earnings_per_hour);
    rows.money(tr("cost of selling"), &Alternative::selling_cost_per_bar);
    rows.minutes(tr("minutes of our time, selling"), &Alternative::selling_minutes_per_bar);
    rows.money(tr("an hour of making and selling earned"), &Alternative::earnings_per_hour_with_selling);
    return {.title = title,
            .columns = {{say("{currency} a bar", arg("currency", currency))},
                        {tr("our own"), Align::right},
                        {tr("bought in"), Align::right},
                        {tr("plain"), Align::right}},
            .rows = rows.take(),
            .note = tr("General running costs and selling are the same for all three; bills for the dye alone are in "
                       "its running costs. Selling is not in what is left over; the last line has it in.")};
}

Table at_both_strengths(const Verdict& verdict) {
    const auto as_strong = verdict_figures(verdict.figures, verdict.hourly_target);
    const auto weaker = verdict_figures(verdict.if_weaker.value_or(VerdictFigures{}), verdict.hourly_target);
    Table table{
        .title = tr("Every figure by name, for both strengths"),
        .columns = {
            {tr("figure")}, {tr("as strong as the bought-in"), Align::right}, {tr("a third as strong"), Align::right}}};
    for (std::size_t at = 0; at < as_strong.size(); ++at) {
        table.rows.push_back(
            {Cell{.shown = as_strong[at].key}, number_cell(as_strong[at].value), number_cell(weaker[at].value)});
    }
    return table;
}

}  // namespace dyestead::reports
