// contribution.h - how many must be sold before a fixed cost is covered, and what is each hour or limited
// thing worth when it cannot do everything?
//
// Contribution is what one more sold leaves after what it alone costs (OpenStax, Principles of Accounting,
// Volume 2, chapter 3). Money in currency units; doubles, for these are decisions.
#pragma once

#include <optional>
#include <vector>

namespace dyestead {

// Units that cover `fixed` and leave `profit`, as a plain number (a maker rounds up). Nothing where a unit
// contributes nothing.
std::optional<double> units_to_earn(double fixed, double contribution, double profit = 0);
// The profit before a tax on profit that leaves so much after it. Nothing where the tax takes all.
std::optional<double> before_tax(double after_tax, double tax_rate);
// How far sales may fall before nothing is left, as a share of them. Nothing for no sales.
std::optional<double> margin_of_safety(double sold, double break_even);

// One of several uses of a thing of which there is not enough: hours, bed, table.
struct ScarceUse {
    double contribution = 0;  // a unit
    double takes = 1;         // of the scarce thing, a unit; 0: none of it
    double at_most = 0;       // units wanted
};
// How many of each to make: first what brings most for each bit of the scarce thing, while it lasts. What takes
// none of it is made in full; what contributes nothing is not made. In the order given.
std::vector<double> best_use(const std::vector<ScarceUse>& uses, double available);

}  // namespace dyestead
