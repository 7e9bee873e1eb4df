// random_garden.h - the acts of a random shop (random_shop.h) at bed, vat and plate beyond the plain ones: seed
// kept and what it would cost, beds lost in part, several lots from a plate, vats told at the end by a method.
#pragma once

#include "tests/support/random_shop.h"
#include "tests/support/shop_builder.h"

namespace dyestead::test {

struct GardenActors {
    Key<Material> seed;
    Key<Material> leaf;
    Key<Material> powder;
    Key<Colour> colour;
    Key<Person> own;
    Key<Person> paid;
};

// Requires: kFirstGardenAct <= act.what < kFirstGardenAct + kGardenActs.
void garden_act(ShopBuilder& builder, const GardenActors& with, const Act& act, Day day);

}  // namespace dyestead::test
