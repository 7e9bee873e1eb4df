// One vat, several lots. Source: Horngren, Datar and Rajan, Cost Accounting, chapter 16 (Cost Allocation: Joint
// Products and Byproducts), the chicken processor. A joint cost of 50 gives 100 lb of breasts at 0.55 a lb, 20 lb
// of wings at 0.20, 40 lb of thighs at 0.35, 80 lb of bones at 0.10 and 10 lb of feathers at 0.05.
// Published by sales value: 33.75, 2.45, 8.60, 4.90, 0.30; by weight: 20, 4, 8, 16, 2. The printed weights are
// rounded to three places first, so four of the figures by value are off by up to 0.011: by unrounded weights
// 33.742, 2.454, 8.589, 4.908, 0.307.
//
// Here a pound is a gram of powder, and what a pound sells for is what a gram is worth beside the first lot's.
#include <doctest/doctest.h>

#include <array>
#include <cmath>

#include "domain/ledger/replay.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr std::array<std::int64_t, 5> kPounds{100, 20, 40, 80, 10};
constexpr std::array<std::int64_t, 5> kPrice{55, 20, 35, 10, 5};

// The cost of each lot, in units of money.
std::array<double, 5> costs(bool by_value) {
    ShopBuilder shop;
    const auto chicken = shop.material("chicken", Purpose::other);
    const auto powder = shop.made("part", MaterialKind::pigment);
    shop.delivery(day_of(2026, 1, 1), chicken, grams(250), Money::units(50));
    auto& vat = shop.add<Vat>();
    vat.date = day_of(2026, 1, 2);
    const auto from = vat.key;
    shop.uses<VatUse>(from, chicken, grams(250));
    std::array<Key<Lot>, 5> lots;
    for (auto& lot : lots) lot = shop.lot(powder);
    auto& drying = shop.add<Drying>();
    drying.date = day_of(2026, 1, 3);
    drying.lot = lots[0];
    drying.amount = grams(kPounds[0]);
    shop.add<DryingVat>(drying.key).vat = from;
    for (std::size_t i = 1; i < lots.size(); ++i) {
        auto& line = shop.add<DryingLot>(drying.key);
        line.lot = lots[i];
        line.amount = grams(kPounds[i]);
        if (by_value) line.worth = Ratio{kPrice[i], kPrice[0]};
    }
    const Ledger ledger = replay(shop.shop(), day_of(2026, 1, 3));
    std::array<double, 5> result{};
    Money sum;
    for (std::size_t i = 0; i < lots.size(); ++i) {
        const auto at = static_cast<std::size_t>(shop.shop().find(lots[i]) - shop.shop().all<Lot>().data());
        sum += ledger.lots[at].cost.materials;
        result[i] = static_cast<double>(ledger.lots[at].cost.materials.in_millionths()) / 1e6;
    }
    CHECK(sum == Money::units(50));
    return result;
}

}  // namespace

TEST_CASE("a joint cost by sales value") {
    const auto found = costs(true);
    constexpr std::array<double, 5> kPublished{33.75, 2.45, 8.60, 4.90, 0.30};
    constexpr std::array<double, 5> kUnrounded{33.742, 2.454, 8.589, 4.908, 0.307};
    for (std::size_t i = 0; i < found.size(); ++i) {
        CHECK(std::abs(found[i] - kPublished[i]) < 0.0115);
        CHECK(std::abs(found[i] - kUnrounded[i]) <= 0.0005);
    }
}

TEST_CASE("a joint cost by weight") {
    const auto found = costs(false);
    constexpr std::array<double, 5> kPublished{20, 4, 8, 16, 2};
    for (std::size_t i = 0; i < found.size(); ++i) CHECK(std::abs(found[i] - kPublished[i]) < 1e-6);
}
