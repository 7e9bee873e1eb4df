// random_cupboard.h - the acts of a random shop (random_shop.h) that are about the cupboard alone: bills with
// all that can be on them, later words on what they cost, counts, and how stock is costed.
#pragma once

#include "tests/support/random_shop.h"
#include "tests/support/shop_builder.h"

namespace dyestead::test {

// In whatever way the material can be stated.
Amount some_of(ShopBuilder& builder, Key<Material> material, int number);
std::optional<Key<Lot>> a_lot_of(ShopBuilder& builder, Key<Material> material, int number);

// Requires: kFirstCupboardAct <= act.what < kFirstCupboardAct + kCupboardActs.
void cupboard_act(ShopBuilder& builder, const Act& act, Day day);

}  // namespace dyestead::test
