// todays_prices.h - the same records, as if all had been bought, heated and worked at one day's prices.
//
// Goods at the latest offer, else at the last delivery's own price, without carriage; each hour at what that person's
// hour is to bring or costs on the day; heat at the day's tariffs. Amounts, minutes and failures stay as they were, and
// so do bills, fees and running costs. What nobody ever offered or delivered keeps what it cost.
#pragma once

#include "domain/facts/shop.h"

namespace dyestead {

Shop at_prices_of(const Shop& shop, Day day);

}  // namespace dyestead
