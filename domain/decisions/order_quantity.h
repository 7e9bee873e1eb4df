// order_quantity.h - how much to order at a time, and at which level to order?
//
// The economic order quantity Q = sqrt(2 D S / H) for yearly demand D, cost S of an order and cost H of holding
// one unit a year (F. W. Harris, "How Many Parts to Make at Once", Factory 10(2), 1913); with price breaks the
// cheapest of the bracket optima and the break points. Doubles: orders are decisions.
#pragma once

#include <optional>
#include <vector>

namespace dyestead {

// Nothing where an order or holding costs nothing: then nothing says how much.
std::optional<double> economic_order_quantity(double yearly_demand, double order_cost, double holding_cost);

struct PriceBracket {
    double from = 0;   // this many in one order
    double price = 0;  // each, for the whole order
};

struct OrderChoice {
    double quantity = 0;
    double yearly_cost = 0;  // goods, orders and holding
};

// Holding costs `holding_share` of the price and `holding_cost` a unit and year besides. Brackets rise in `from`;
// the first begins at the least that can be ordered. `at_most`: shelf room, or what is used before it goes off.
// Nothing where nothing can be ordered.
std::optional<OrderChoice> best_order(double yearly_demand, double order_cost, double holding_share,
                                      double holding_cost, const std::vector<PriceBracket>& brackets,
                                      std::optional<double> at_most = std::nullopt);
double yearly_cost(double yearly_demand, double order_cost, double holding_a_unit, double price, double quantity);

// Extra stock for demand that varies over a lead time that varies: z sqrt(L sd^2 + d^2 sd_L^2).
struct LeadDemand {
    double a_day = 0;         // d
    double a_day_spread = 0;  // sd
    double lead_days = 0;     // L
    double lead_spread = 0;   // sd_L, days
};
double safety_stock(const LeadDemand& demand, double z);
double reorder_level(const LeadDemand& demand, double z);

// For use in lumps: the smallest number of batches that lasts through a time in which `expected` are poured,
// with at least this chance (Poisson). Requires: 0 <= chance < 1.
int batches_to_hold(double expected, double chance);

}  // namespace dyestead
