#include "domain/decisions/order_quantity.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace dyestead {

std::optional<double> economic_order_quantity(double yearly_demand, double order_cost, double holding_cost) {
    if (!(yearly_demand > 0) || !(order_cost > 0) || !(holding_cost > 0)) return std::nullopt;
    return std::sqrt(2 * yearly_demand * order_cost / holding_cost);
}

double yearly_cost(double yearly_demand, double order_cost, double holding_a_unit, double price, double quantity) {
    return yearly_demand * price + yearly_demand / quantity * order_cost + quantity / 2 * holding_a_unit;
}

std::optional<OrderChoice> best_order(double yearly_demand, double order_cost, double holding_share,
                                      double holding_cost, const std::vector<PriceBracket>& brackets,
                                      std::optional<double> at_most) {
    if (!(yearly_demand > 0)) return std::nullopt;
    std::optional<OrderChoice> best;
    for (std::size_t i = 0; i < brackets.size(); ++i) {
        const PriceBracket& bracket = brackets[i];
        const double holding = holding_share * bracket.price + holding_cost;
        double least = bracket.from;
        double most = i + 1 < brackets.size() ? brackets[i + 1].from : std::numeric_limits<double>::infinity();
        if (at_most) most = std::min(most, *at_most);
        if (least > most) continue;
        // Nothing says how much: a year's worth is enough.
        const double wanted = economic_order_quantity(yearly_demand, order_cost, holding).value_or(yearly_demand);
        const double quantity = std::clamp(wanted, least, most);
        if (!(quantity > 0)) continue;
        const double cost = yearly_cost(yearly_demand, order_cost, holding, bracket.price, quantity);
        if (!best || cost < best->yearly_cost) best = OrderChoice{quantity, cost};
    }
    return best;
}

double safety_stock(const LeadDemand& demand, double z) {
    const double spread = demand.lead_days * demand.a_day_spread * demand.a_day_spread +
                          demand.a_day * demand.a_day * demand.lead_spread * demand.lead_spread;
    return z * std::sqrt(std::max(0.0, spread));
}

double reorder_level(const LeadDemand& demand, double z) {
    return demand.a_day * demand.lead_days + safety_stock(demand, z);
}

int batches_to_hold(double expected, double chance) {
    if (!(expected > 0)) return 0;
    // Beyond any shop; keeps the sum finite for a number that was typed wrong.
    constexpr int kMost = 100'000;
    double log_term = -expected;
    double reached = std::exp(log_term);
    int batches = 0;
    while (reached < chance && batches < kMost) {
        ++batches;
        log_term += std::log(expected) - std::log(static_cast<double>(batches));
        reached += std::exp(log_term);
    }
    return batches;
}

}  // namespace dyestead
