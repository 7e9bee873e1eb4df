// earned.h - what did a period earn? Takings less what was sold had cost to make, less what was lost,
// given away and spent on the period itself.
//
// Costs carry every part, so that it can be read without the shop's own hours (for the accountant: an
// owner's hours are no cost incurred) and with them.
#pragma once

#include <array>

#include "domain/ledger/losses.h"
#include "domain/ledger/takings.h"

namespace dyestead {

// What stood in an account of the period's own: `of` is never selling or overhead.
struct PeriodCost {
    Boundary of{};
    Cost cost;
};

struct Earned {
    Period period{};
    Money gross;            // takings; at a fair that was counted, what was counted
    Money tax;              // sales tax inside them
    Money tin_difference;   // counted at fairs less bars at their prices; inside gross
    std::int64_t bars = 0;  // sold, in thousandths

    Cost cost_of_sales;
    std::array<Cost, kLossKinds> losses{};  // gifts too, by LossKind

    Cost selling;  // all of it: the four below and the people at the stall
    Money stalls;  // fees for the pitch
    Money travel;
    Money postage;
    Money payment_fees;                    // to be paid, bags
    std::vector<PeriodCost> period_costs;  // crop difference, dye-only bills, shortfalls ...

    Money overhead_accrued;
    Money overhead_absorbed;  // by good bars
    // Absorbed beyond what accrued is shown against what absorbed it: bars still here and bars gone, in
    // proportion (IAS 2, paragraph 13). On the statement only; no movement.
    Money over_absorbed_in_stock;
    Money over_absorbed_in_sales;

    Money net() const { return gross - tax; }
    Cost lost() const;
    Cost given() const;
    Money under_absorbed() const;  // nothing where more was absorbed than accrued
    // All that was spent on the period, over-absorption in sales taken off.
    Cost spent() const;
    Money earned_without_labour() const { return net() - spent().cash(); }
    Money earned() const { return net() - spent().full(); }
    Money gross_margin_without_labour() const { return net() - cost_of_sales.cash(); }
    Money gross_margin() const { return net() - cost_of_sales.full(); }
};

// Requires: period.last <= ledger.as_of.
Earned earned(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead
