#include "reports/year_report.h"

#include "domain/ledger/earned.h"
#include "domain/ledger/write_down.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/statement_parts.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/statement_words.h"

namespace dyestead::reports {
namespace {

class YearReport {
public:
    YearReport(const Shop& shop, const Ledger& ledger, Period period)
        : shop_{shop},
          ledger_{ledger},
          period_{period},
          year_{earned(shop, ledger, period)},
          currency_{currency_of(shop)} {
        document_ = begin_document(shop, ledger, "year",
                                   say("What was earned from {first} to {last}, at cost without your own hours",
                                       arg("first", shown_date(period.first)), arg("last", shown_date(period.last))));
    }

    Document take() {
        document_.blocks.push_back(Headline{headline()});
        add_year();
        add_tin();
        add_overhead();
        add_write_down();
        document_.blocks.push_back(Paragraph{
            tr("An owner's hours are no cost to the accountant, so the first column leaves them out; the second "
               "has them at what an hour is to bring. Ask your accountant which figure counts."),
            Tone::small});
        document_.blocks.push_back(tie_line(shop_, ledger_, period_));
        return std::move(document_);
    }

private:
    std::string headline() const {
        return say(
            "{net} taken without sales tax, {sales} of cost in what was sold: {earned} earned, or {full} once your "
            "own hours are paid.",
            arg("net", shown_money(year_.net(), currency_)),
            arg("sales", shown_money(year_.cost_of_sales.cash(), currency_)),
            arg("earned", shown_money(year_.earned_without_labour(), currency_)),
            arg("full", shown_money(year_.earned(), currency_)));
    }

    void figure(const std::string& key, Money money) { document_.figures.push_back({key, units(money)}); }

    void add_year() {
        MoneyTable rows{tr("From takings to what was earned"), currency_};
        rows.add(tr("takings"), two(year_.gross));
        rows.add_unless_nothing(tr("of them sales tax"), two(-year_.tax));
        rows.add(tr("cost of what was sold"), -two(year_.cost_of_sales));
        rows.add(tr("gross margin"), {year_.gross_margin_without_labour(), year_.gross_margin()});
        for (std::size_t i = 0; i < kLossKinds; ++i) {
            const auto kind = static_cast<LossKind>(i);
            rows.add_unless_nothing(name_of(kind), -two(year_.losses[i]));
        }
        rows.add_unless_nothing(name_of(PaidFor::stalls), two(-year_.stalls));
        rows.add_unless_nothing(name_of(PaidFor::travel), two(-year_.travel));
        rows.add_unless_nothing(name_of(PaidFor::postage), two(-year_.postage));
        rows.add_unless_nothing(name_of(PaidFor::payment_fees), two(-year_.payment_fees));
        rows.add_unless_nothing(tr("people at fairs and packing"), -people());
        for (const PeriodCost& each : year_.period_costs) rows.add_unless_nothing(name_of(each.of), -two(each.cost));
        rows.add_unless_nothing(tr("general running costs that no bar took up"), two(-year_.under_absorbed()));
        rows.add_unless_nothing(tr("taken up beyond what there was, in bars sold"), two(year_.over_absorbed_in_sales));
        document_.blocks.push_back(
            std::move(rows).total(tr("earned"), {year_.earned_without_labour(), year_.earned()}));
        add_year_figures();
    }

    // What is in selling beside the bills: wages, and own hours.
    TwoMoneys people() const {
        Cost cost = year_.selling;
        cost.overhead -= year_.stalls + year_.travel + year_.postage + year_.payment_fees;
        return two(cost);
    }

    void add_year_figures() {
        figure("takings.gross", year_.gross);
        figure("takings.sales_tax", year_.tax);
        figure("takings.net", year_.net());
        figure("takings.tin_difference", year_.tin_difference);
        document_.figures.push_back({"bars_sold", static_cast<double>(year_.bars) / 1000});
        add_figures(document_, "cost_of_sales", two(year_.cost_of_sales));
        add_figures(document_, "gross_margin", {year_.gross_margin_without_labour(), year_.gross_margin()});
        add_figures(document_, "lost", two(year_.lost()));
        add_figures(document_, "given", two(year_.given()));
        add_figures(document_, "selling", two(year_.selling));
        for (const PeriodCost& each : year_.period_costs)
            add_figures(document_, fmt::format("period.{}", key_of(each.of)), two(each.cost));
        figure("overhead.accrued", year_.overhead_accrued);
        figure("overhead.absorbed", year_.overhead_absorbed);
        figure("overhead.under_absorbed", year_.under_absorbed());
        figure("overhead.over_absorbed_in_stock", year_.over_absorbed_in_stock);
        figure("overhead.over_absorbed_in_sales", year_.over_absorbed_in_sales);
        add_figures(document_, "earned", {year_.earned_without_labour(), year_.earned()});
    }

    void add_tin() {
        if (year_.tin_difference.is_zero()) return;
        const bool more = year_.tin_difference > Money{};
        const auto amount = arg("amount", shown_money(more ? year_.tin_difference : -year_.tin_difference, currency_));
        document_.blocks.push_back(Paragraph{
            more ? say("At counted fairs {amount} more was in the tin than the bars sold should have brought; it is in "
                       "the takings.",
                       amount)
                 : say("At counted fairs {amount} less was in the tin than the bars sold should have brought; the "
                       "takings "
                       "are what was there.",
                       amount),
            Tone::small});
    }

    void add_overhead() {
        if (year_.overhead_accrued.is_zero() && year_.overhead_absorbed.is_zero()) return;
        document_.blocks.push_back(Paragraph{say(
            "General running costs: {accrued} fell on these days, and the good bars made on them took up {absorbed}.",
            arg("accrued", shown_money(year_.overhead_accrued, currency_)),
            arg("absorbed", shown_money(year_.overhead_absorbed, currency_)))});
        if (year_.over_absorbed_in_stock.is_zero()) return;
        document_.blocks.push_back(Paragraph{
            say("{amount} of what was taken up beyond that is still in bars here: take it off the stock for this "
                "statement.",
                arg("amount", shown_money(year_.over_absorbed_in_stock, currency_)))});
    }

    // A valuation beside the books: what is written down now less what was at the start.
    void add_write_down() {
        const Money before = write_down(shop_, ledger_, period_.before()).total();
        const Money after = write_down(shop_, ledger_, period_.last).total();
        const Money change = after - before;
        figure("write_down.opening", before);
        figure("write_down.closing", after);
        add_figures(
            document_, "earned_after_write_down", {year_.earned_without_labour() - change, year_.earned() - change});
        if (before.is_zero() && after.is_zero()) return;
        MoneyTable rows{tr("Stock worth less than it cost"), currency_};
        rows.add(tr("earned, as above"), {year_.earned_without_labour(), year_.earned()});
        rows.add(tr("written down at the start, come back or gone since"), two(before));
        rows.add(tr("written down at the end"), two(-after));
        document_.blocks.push_back(std::move(rows).total(
            tr("earned after it"), {year_.earned_without_labour() - change, year_.earned() - change}));
    }

    const Shop& shop_;
    const Ledger& ledger_;
    Period period_;
    Earned year_;
    std::string currency_;
    Document document_;
};

}  // namespace

Document year_report(const Shop& shop, const Ledger& ledger, Period period) {
    return YearReport{shop, ledger, period}.take();
}

}  // namespace dyestead::reports
