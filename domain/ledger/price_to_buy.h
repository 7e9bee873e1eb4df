// price_to_buy.h - what would so much of a material cost to buy? For what the shop makes itself and could
// have bought: seed kept from a bed.
#pragma once

#include <optional>

#include "domain/facts/shop.h"
#include "domain/values/rate.h"

namespace dyestead {

// The latest offer known and in force on the day, else the last price paid by then; nothing where neither
// is on record, or only for amounts that do not lead to the kind the material is held in. Per amount as held.
std::optional<Rate> price_to_buy(const Shop& shop, const Material& material, Day day);

}  // namespace dyestead
