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
const PriceBelief* price_belief_in_force(const Shop& shop, Key<Colour> colour, Day day);
// Who worked where nobody is named: the first by code of the people who are the shop's own that day.
const Person* default_person(const Shop& shop, Day day);

// General overhead accrued from the first setting to the end of a day: each year's amount by days
// gone of the days in the year.
Money overhead_accrued(const Shop& shop, Day day);

}  // namespace dyestead
