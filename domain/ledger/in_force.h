// in_force.h - which dated setting counts on a day? The latest one from that day or before.
#pragma once

#include <optional>

#include "domain/facts/shop.h"
#include "domain/values/rate.h"

namespace dyestead {

// All take the shop and a day; nothing when no such setting is on record by then.
const Pay* pay_in_force(const Shop& shop, Key<Person> person, Day day);
std::optional<Rate> tariff_in_force(const Shop& shop, HeatSource source, Day day);
const Overhead* overhead_in_force(const Shop& shop, Day day);
Ratio normal_loss_in_force(const Shop& shop, LossOf of, Day day);  // 0 when none
Ratio sales_tax_in_force(const Shop& shop, Day day);               // 0 when not registered
const ChannelFee* fee_in_force(const Shop& shop, Channel channel, Day day);
Ratio waiting_share_in_force(const Shop& shop, Day day);  // 0 when none
std::optional<Money> shelf_price_in_force(const Shop& shop, Key<Material> bar, Day day);
const WholesalePrice* wholesale_price_in_force(const Shop& shop, Key<Material> bar, Day day);
const PowderPrice* powder_price_in_force(const Shop& shop, Key<Colour> colour, Day day);
// Each of its figures as the latest rule by then that says it.
SowingRule sowing_rule_in_force(const Shop& shop, Day day);
PriceRule price_rule_in_force(const Shop& shop, Day day);
const PriceBelief* price_belief_in_force(const Shop& shop, Key<Colour> colour, Day day);
// The newest answer on whether a colour may be sold; null while nobody was asked.
const Allowed* allowed_in_force(const Shop& shop, Key<Colour> colour, Day day);
// Who worked where nobody is named: the first by code of the people who are the shop's own that day.
const Person* default_person(const Shop& shop, Day day);

// Whether a material's goods may leave at the moving average: what is bought and has no strength.
bool can_be_averaged(const Shop& shop, const Material& material);
// The first day of a financial year, from a cost rule's own day on.
Day takes_effect(const Shop& shop, const CostRule& rule);
CostBy cost_rule_in_force(const Shop& shop, const Material& material, Day day);

// What a tool has worn by the end of a day: its price evenly by days from the day it was bought, over its
// years (one at least); what is left of it on the day it is gone.
Money wear_accrued(const Equipment& tool, Day day);
// What the general tools in use that day wear in a year.
Money wear_per_year(const Shop& shop, Day day);
// Worn by tools for the dye alone: already spent, whatever becomes of the dye.
Money dye_wear_accrued(const Shop& shop, Day day);
// General running costs, without wear: each year's amount by days gone of the days in the year.
Money running_costs_accrued(const Shop& shop, Day day);

// General overhead accrued from the first setting or tool to the end of a day: running costs and wear.
Money overhead_accrued(const Shop& shop, Day day);

}  // namespace dyestead
