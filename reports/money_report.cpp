#include "reports/money_report.h"

#include "domain/ledger/money_flow.h"
#include "reports/begin_document.h"
#include "reports/cells.h"
#include "reports/statement_parts.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/statement_words.h"

namespace dyestead::reports {
namespace {

// One row for each kind with any money, and a figure for every kind.
template <class Each, std::size_t Size>
void add_side(Document& document, const std::array<Money, Size>& all, Money total, std::string title,
              std::string_view side) {
    Table table{.title = std::move(title),
                .columns = {{tr("what")}, {document.currency, Align::right}},
                .emphasise_last_row = true};
    const auto add = [&](std::string what, Money money) {
        table.rows.push_back({Cell{.shown = std::move(what)}, money_cell(units(money), document.currency)});
    };
    for (std::size_t i = 0; i < Size; ++i) {
        const auto each = static_cast<Each>(i);
        document.figures.push_back({fmt::format("{}.{}", side, key_of(each)), units(all[i])});
        if (!all[i].is_zero()) add(name_of(each), all[i]);
    }
    add(tr("in all"), total);
    document.figures.push_back({fmt::format("{}.total", side), units(total)});
    document.blocks.push_back(std::move(table));
}

}  // namespace

Document money_report(const Shop& shop, const Ledger& ledger, Period period) {
    const MoneyFlow flow = money_flow(shop, ledger, period);
    const std::string currency = currency_of(shop);
    Document document =
        begin_document(shop, ledger, "money",
                       say("Money in and out from {first} to {last}", arg("first", shown_date(period.first)),
                           arg("last", shown_date(period.last))));
    const Money left = flow.total_in() - flow.total_out();
    document.blocks.push_back(Headline{
        say("{in} came in and {out} went out: {left} between them.", arg("in", shown_money(flow.total_in(), currency)),
            arg("out", shown_money(flow.total_out(), currency)), arg("left", shown_money(left, currency)))});
    add_side<TakenAt>(document, flow.in, flow.total_in(), tr("In, as customers paid it"), "in");
    add_side<PaidFor>(document, flow.out, flow.total_out(), tr("Out"), "out");
    document.figures.push_back({"left", units(left)});
    document.blocks.push_back(Paragraph{
        tr("Energy stands here at the tariff on the day it was used, in place of the power bill: if that bill is "
           "also among the bills paid, count it once."),
        Tone::small});
    document.blocks.push_back(tie_line(shop, ledger, period));
    return document;
}

}  // namespace dyestead::reports
