#include "domain/decisions/scale.h"

#include <doctest/doctest.h>

#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

// 1000 g of oil stated in shares, 10 g of scent, 128.676 g of lye, 257.352 g of water.
struct Loaf : ShopBuilder {
    Key<Recipe> loaf = recipe(12);
    Key<Material> olive = oil("olive oil", {190, 1});
    Key<Material> scent = material("lavender", Purpose::scent);

    Loaf() {
        at(loaf).lye_concentration = {1, 3};
        at(loaf).oils = grams(1'000);
        add<RecipePart>(loaf).material = olive;
        all<RecipePart>().back().share = Ratio{1, 1};
        add<RecipePart>(loaf).material = scent;
        all<RecipePart>().back().amount = grams(10);
    }
};

}  // namespace

TEST_CASE("for so many bars everything goes by the same share, rounded once") {
    Loaf b;
    const auto half = for_bars(b.shop(), b.at(b.loaf), 6);
    REQUIRE(half);
    CHECK(half->loaves == Ratio{1, 2});
    CHECK(half->parts[0].amount == Quantity::grams(500));
    CHECK(half->parts[1].amount == Quantity::grams(5));
    CHECK(half->lye.lye == Quantity::milligrams(64'338));
    CHECK(half->lye.water == Quantity::milligrams(128'676));
    b.at(b.loaf).bars_per_loaf = 0;
    CHECK_FALSE(for_bars(b.shop(), b.at(b.loaf), 6));
}

TEST_CASE("for a mould of a weight or a volume, by what the whole loaf weighs") {
    Loaf b;
    const auto whole = for_bars(b.shop(), b.at(b.loaf), 12);
    REQUIRE(whole);
    REQUIRE(whole->mass);
    CHECK(*whole->mass == Quantity::milligrams(1'000'000 + 10'000 + 128'676 + 257'352));
    const Quantity twice = *whole->mass + *whole->mass;
    const auto scaled = for_weight(b.shop(), b.at(b.loaf), twice);
    REQUIRE(scaled);
    CHECK(scaled->loaves == Ratio{2, 1});
    CHECK(scaled->mass == twice);
    const auto mould = for_volume(b.shop(), b.at(b.loaf), Quantity::microlitres(twice.in_base()), {1, 2});
    REQUIRE(mould);
    CHECK(mould->loaves == Ratio{1, 1});
    b.at(b.olive).saponification.reset();
    CHECK_FALSE(for_weight(b.shop(), b.at(b.loaf), twice));
    CHECK_FALSE(for_volume(b.shop(), b.at(b.loaf), Quantity::grams(5), {1, 1}));
}
