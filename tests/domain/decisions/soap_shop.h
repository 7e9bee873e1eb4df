// soap_shop.h - a small invented shop that makes one plain bar, for the questions about what to make, order and charge.
// A loaf: 1,000 g of oil at saponification value 140.27 (so that it takes 95 g of lye at 5 % superfat and, at a lye
// concentration of one third, 190 g of water), a band for each of its ten bars.
#pragma once

#include "domain/ledger/replay.h"
#include "tests/support/shop_builder.h"

namespace dyestead::test {

class SoapShop : public ShopBuilder {
public:
    Day today = day_of(2026, 6, 1);
    Key<Person> who = person(day_of(2025, 1, 1), Money::units(12));
    Key<Material> oil_ = oil("oil", Ratio{14'027, 100});
    Key<Material> lye = material("lye", Purpose::lye);
    Key<Material> water = material("water", Purpose::water, HeldAs::volume);
    Key<Material> band = material("band", Purpose::wrapping, HeldAs::count);
    Key<Material> bar = made("bar", MaterialKind::bar);
    Key<Recipe> loaf = recipe(10);

    SoapShop() {
        at(loaf).lye_concentration = {1, 3};
        auto& part = add<RecipePart>(loaf);
        part.material = oil_;
        part.amount = grams(1'000);
        auto& wrap = add<RecipeWrapping>(loaf);
        wrap.material = band;
        wrap.per_bar = pieces(1);
        add<RecipeColouring>(loaf).bar = bar;
    }

    Ledger ledger() const { return replay(shop(), today); }

    using ShopBuilder::offer;
    void offer(Key<Material> material, Amount pack, Money price, int lead_days) {
        ShopBuilder::offer(day_of(2026, 1, 1), material, pack, price).lead_days = lead_days;
    }
    void plan(Day date, int loaves) {
        auto& fact = add<Plan>();
        fact.noted = day_of(2026, 5, 1);
        fact.date = date;
        fact.recipe = loaf;
        fact.bar = bar;
        fact.loaves = loaves;
    }
    void stock_all(std::int64_t loaves) {
        already_here(day_of(2026, 1, 1), oil_, grams(1'000 * loaves), Money::units(8 * loaves));
        already_here(day_of(2026, 1, 1), lye, grams(100 * loaves), Money::units(loaves));
        already_here(day_of(2026, 1, 1), water, {Quantity::microlitres(200'000 * loaves), Unit::l, Mark::measured}, {});
        already_here(day_of(2026, 1, 1), band, pieces(10 * loaves), Money::units(loaves));
    }
};

}  // namespace dyestead::test
