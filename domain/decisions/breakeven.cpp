#include "domain/decisions/breakeven.h"

namespace dyestead {

namespace {

Breakeven at(double value) {
    return {value, NoBreakeven::exists};
}

Breakeven none(NoBreakeven why) {
    return {std::nullopt, why};
}

// y* = y L / (D + L), exists when L > 0 and D + L > 0.
Breakeven yield(const Model& m, double d) {
    const double colour = m.home_full();
    if (!(colour > 0)) return none(NoBreakeven::pigment_costs_nothing);
    if (!(d + colour > 0)) return none(NoBreakeven::even_free_would_not_pay);
    return at(m.yield * colour / (d + colour));
}

// K* = K F / (F + D), exists when F > 0 and F + D > 0.
Breakeven kg_per_vat(const Model& m, double d) {
    const double fixed = m.fixed_per_vat();
    if (!(fixed > 0)) return none(NoBreakeven::size_does_not_matter);
    if (!(fixed + d > 0)) return none(NoBreakeven::no_vat_big_enough);
    return at(m.kg_per_vat * fixed / (fixed + d));
}

}  // namespace

Breakevens breakevens(const Model& m) {
    const Difference difference = home_less_bought(m);
    const double d = difference.full(m.hourly_target);
    Breakevens all;
    // pi* = pi - D/k
    all.premium_per_bar = m.kept_share() > 0 ? at(m.premium() - d / m.kept_share()) : none(NoBreakeven::fees_take_all);
    // W* = E
    const auto earned = difference.earned_per_hour();
    all.hourly_target = earned ? at(*earned) : none(NoBreakeven::no_difference_in_hours);
    all.yield_g_per_kg = yield(m, d);
    all.harvest_kg_per_vat = kg_per_vat(m, d);
    // T* = T + D n_v / omega
    all.hands_on_minutes_per_vat = m.target_per_minute() > 0
                                       ? at(m.minutes_per_vat() + d * m.bars_per_vat() / m.target_per_minute())
                                       : none(NoBreakeven::no_target);
    // b* = b - D / q_b
    all.bought_price_per_gram = at(m.bought_price_per_gram - d / m.bought_grams());
    return all;
}

Breakevens cash_breakevens(const Model& model) {
    Model cash = model;
    cash.hourly_target = 0;
    Breakevens all = breakevens(cash);
    all.hourly_target = none(NoBreakeven::no_cash_form);
    all.hands_on_minutes_per_vat = none(NoBreakeven::no_cash_form);
    return all;
}

}  // namespace dyestead
