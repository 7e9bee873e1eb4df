// random_selling.h - the acts of a random shop (random_shop.h) at the bench, the stall and the desk that
// speak of what was done before: poured off, out at a shop, returned, powder sold, sittings, holds, tools.
#pragma once

#include "tests/support/random_shop.h"
#include "tests/support/shop_builder.h"

namespace dyestead::test {

struct SellingActors {
    Key<Material> bar;
    Key<Material> powder;
    Key<Recipe> recipe;
    Key<Person> own;
    Key<Person> paid;
};

inline constexpr int kFirstSellingAct = 17;

// Of acts of any kind: deliveries, batches, cuts, sales and what comes of them, in a third of the time.
Shop selling_shop(std::vector<Act> acts);

void selling_act(ShopBuilder& builder, const SellingActors& with, const Act& act, Day day);

}  // namespace dyestead::test
