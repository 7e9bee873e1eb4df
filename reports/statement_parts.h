// statement_parts.h - what the statements share: their two columns of money, the figures behind them,
// the words for their days, and the last line, which says whether they tie to the books.
#pragma once

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"
#include "reports/document.h"

namespace dyestead::reports {

// In units of the currency, as a figure of a document.
double units(Money money);
double hours(Minutes time);

// Without the shop's own hours (as the accountant wants it) and with them.
struct TwoMoneys {
    Money without;
    Money with;
};
TwoMoneys two(const Cost& cost);
TwoMoneys two(Money money);  // the same in both
TwoMoneys operator-(TwoMoneys moneys);

class MoneyTable {
public:
    MoneyTable(std::string title, std::string currency);

    void add(std::string what, TwoMoneys moneys);
    void add_unless_nothing(std::string what, TwoMoneys moneys);
    // As the emphasised last row.
    Table total(std::string what, TwoMoneys moneys) &&;

private:
    Table table_;
    std::string currency_;
};

void add_figures(Document& document, const std::string& key, TwoMoneys moneys);

// "from 1 January 2026 to 30 June 2026"
std::string shown_period(Period period);

// From the day asked for, else from the start of the shop's financial year, to the books' day.
Period period_of(const Shop& shop, const Ledger& ledger, std::optional<Day> from);

// Whether every statement over the period says what the books say, to the unit, or which does not.
Paragraph tie_line(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead::reports
