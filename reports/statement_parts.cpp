#include "reports/statement_parts.h"

#include "domain/ledger/tie_outs.h"
#include "reports/cells.h"
#include "reports/words/say.h"
#include "reports/words/statement_words.h"

namespace dyestead::reports {

double units(Money money) {
    return static_cast<double>(money.in_millionths()) / 1e6;
}

double hours(Minutes time) {
    return static_cast<double>(time.in_millionths()) / 60e6;
}

TwoMoneys two(const Cost& cost) {
    return {cost.cash(), cost.full()};
}

TwoMoneys two(Money money) {
    return {money, money};
}

TwoMoneys operator-(TwoMoneys moneys) {
    return {-moneys.without, -moneys.with};
}

MoneyTable::MoneyTable(std::string title, std::string currency) : currency_{std::move(currency)} {
    const auto money = arg("currency", currency_);
    table_ = {.title = std::move(title),
              .columns = {{tr("what")},
                          {say("{currency} without your hours", money), Align::right},
                          {say("{currency} with your hours", money), Align::right}}};
}

void MoneyTable::add(std::string what, TwoMoneys moneys) {
    table_.rows.push_back({Cell{.shown = std::move(what)}, money_cell(units(moneys.without), currency_),
                           money_cell(units(moneys.with), currency_)});
}

void MoneyTable::add_unless_nothing(std::string what, TwoMoneys moneys) {
    if (!moneys.without.is_zero() || !moneys.with.is_zero()) add(std::move(what), moneys);
}

Table MoneyTable::total(std::string what, TwoMoneys moneys) && {
    add(std::move(what), moneys);
    table_.emphasise_last_row = true;
    return std::move(table_);
}

void add_figures(Document& document, const std::string& key, TwoMoneys moneys) {
    document.figures.push_back({key + ".cash_cost", units(moneys.without)});
    document.figures.push_back({key + ".full_cost", units(moneys.with)});
}

std::string shown_period(Period period) {
    return say("from {first} to {last}", arg("first", shown_date(period.first)), arg("last", shown_date(period.last)));
}

Period period_of(const Shop& shop, const Ledger& ledger, std::optional<Day> from) {
    if (from) return {*from, ledger.as_of};
    const auto& about = shop.all<About>();
    const int month = about.empty() ? 1 : about.front().year_begins.value_or(1);
    return Period::year_to(ledger.as_of, static_cast<unsigned>(month));
}

Paragraph tie_line(const Shop& shop, const Ledger& ledger, Period period) {
    std::string apart;
    std::uint64_t count = 0;
    for (const TieOut& each : tie_outs(shop, ledger, period)) {
        ++count;
        if (each.ties()) continue;
        if (!apart.empty()) apart += "; ";
        apart += name_of(each.of);
    }
    if (apart.empty())
        return {say_count("Checked to the last unit: {count} statement says what the books say.",
                          "Checked to the last unit: all {count} statements say what the books say.", count),
                Tone::small};
    return {say("This does not tie to the books: {which}. Look under what does not add up.", arg("which", apart)),
            Tone::caution};
}

}  // namespace dyestead::reports
