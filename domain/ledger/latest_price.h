// latest_price.h - what would a material cost to buy again on a day?
#pragma once

#include <optional>

#include "domain/facts/shop.h"
#include "domain/values/rate.h"

namespace dyestead {

// The latest offer that was known and in force, else what the last delivery's line cost; without carriage.
// Per quantity as the material is held. Nothing when neither is on record.
std::optional<Rate> latest_price(const Shop& shop, Key<Material> material, Day day);

}  // namespace dyestead
