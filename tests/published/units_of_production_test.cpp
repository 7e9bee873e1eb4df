// A bed wears out as it is cut: units of production, and depletion. Source: OpenStax, Principles of Accounting,
// Volume 1: Financial Accounting, section 11.3 (Explain and Apply Depreciation Methods to Allocate Capitalized
// Costs). Kenzie's press cost 58,000 in all (54,000 and 1,500 and 2,500) with 10,000 left at its end, 48,000 over
// 960,000 pages: 0.05 a page, and 9,000, 10,000, 10,500, 9,500 and 9,000 for 180, 200, 210, 190 and 180 thousand
// pages. A natural resource of 1,000,000 over 10,000 gallons: 100 a gallon, 400,000 for the 4,000 of a year.
// What stood at the end of the press's life is credited as what is kept of a by-product: IAS 2, paragraph 14,
// takes its value off the cost of the main product.
//
// Here a thousand pages, or a gallon, is a gram of harvest.
#include <doctest/doctest.h>

#include <array>

#include "domain/ledger/replay.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day year(int n) {
    return day_of(2019 + n, 6, 1);
}

struct Wearing : ShopBuilder {
    Key<Material> cut = made("harvest", MaterialKind::harvest);
    Key<Material> seed = made("seed", MaterialKind::seed);
    Key<Planting> bed;

    Wearing(Money cost, std::int64_t in_all) {
        const auto stuff = material("what went in", Purpose::other);
        delivery(day_of(2019, 1, 1), stuff, grams(1), cost);
        bed = planting(day_of(2019, 1, 2), square_metres(1), grams(in_all));
        at(at(bed).plant).crops = 9;
        uses<PlantingUse>(bed, stuff, grams(1));
    }
    Money cost(Key<Lot> lot, int until) const {
        const Ledger ledger = replay(shop(), year(until));
        return ledger.lots[static_cast<std::size_t>(shop().find(lot) - shop().all<Lot>().data())].cost.materials;
    }
};

}  // namespace

TEST_CASE("units of production: five years of a press, what is left at its end credited first") {
    Wearing press{Money::units(54'000 + 1'500 + 2'500), 960};
    auto& offer = press.add<Offer>();
    offer.noted = offer.from = day_of(2019, 1, 1);
    offer.material = press.seed;
    offer.pack = grams(1);
    offer.price = Money::units(10'000);
    const auto kept = press.lot(press.seed);
    auto& credit = press.add<SeedKept>();
    credit.date = day_of(2019, 1, 3);
    credit.planting = press.bed;
    credit.lot = kept;
    credit.amount = grams(1);
    constexpr std::array<std::int64_t, 5> kPages{180, 200, 210, 190, 180};
    constexpr std::array<std::int64_t, 5> kPublished{9'000, 10'000, 10'500, 9'500, 9'000};
    for (std::size_t i = 0; i < kPages.size(); ++i) {
        const int in = static_cast<int>(i) + 1;
        const auto lot = press.harvest(year(in), press.bed, press.cut, grams(kPages[i]));
        CHECK(press.cost(lot, in) == Money::units(kPublished[i]));
    }
    CHECK(press.cost(kept, 1) == Money::units(10'000));
}

TEST_CASE("depletion: 100 a gallon") {
    Wearing well{Money::units(1'000'000), 10'000};
    CHECK(well.cost(well.harvest(year(1), well.bed, well.cut, grams(1)), 1) == Money::units(100));
    CHECK(well.cost(well.harvest(year(2), well.bed, well.cut, grams(4'000)), 2) == Money::units(400'000));
}
