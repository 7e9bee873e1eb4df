// Make or buy: OpenStax, Principles of Accounting, Volume 2: Managerial Accounting, chapter 10 (Short-Term
// Decision-Making), the thermal lid. 120,000 lids; direct materials 0.87, direct labour 0.45, variable overhead
// 0.36 and fixed overhead 0.51 each; bought for 1.75. Made: 201,600 against 210,000, so make. Where 0.12 of the
// fixed overhead would be saved by buying: 216,000 against 210,000, so buy.
//
// Here a lid is a bar, and what makes it a gram of powder: the fixed overhead is a bill for the dye alone.
#include <doctest/doctest.h>

#include "domain/decisions/verdict.h"
#include "domain/ledger/replay.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;
using doctest::Approx;

namespace {

constexpr int kLids = 120'000;

// 61,200 of fixed overhead are 0.51 a lid.
VerdictFigures thermal_lid(Ratio avoidable) {
    ShopBuilder shop;
    shop.person(day_of(2026, 1, 1), Money::units(54'000));
    const auto bought = shop.material("lid, bought", Purpose::colourant);
    auto& colour = shop.add<Colour>();
    colour.bought_match = bought;
    const auto lid = colour.key;
    const auto stuff = shop.material("direct materials", Purpose::other);
    const auto leaf = shop.made("leaf", MaterialKind::harvest);
    const auto powder = shop.made("powder", MaterialKind::pigment);
    const auto plain = shop.made("without", MaterialKind::bar);
    const auto own = shop.made("made", MaterialKind::bar);
    const auto other = shop.made("bought", MaterialKind::bar);
    shop.delivery(day_of(2026, 1, 2), stuff, grams(1'000), Money::units(104'400));
    shop.delivery(day_of(2026, 1, 2), bought, grams(kLids), Money::units(210'000));
    auto& tariff = shop.add<Tariff>();
    tariff.from = day_of(2026, 1, 1);
    tariff.per_kwh = Money::units(1);

    const auto bed = shop.planting(day_of(2026, 2, 1), square_metres(1), grams(1'000));
    shop.at(shop.at(bed).plant).colour = lid;
    shop.harvest(day_of(2026, 3, 1), bed, leaf, grams(1'000));
    auto& vat = shop.add<Vat>();
    vat.date = day_of(2026, 3, 2);
    vat.colour = lid;
    const auto making = vat.key;
    shop.uses<VatUse>(making, leaf, grams(1'000));
    shop.uses<VatUse>(making, stuff, grams(1'000));
    shop.add<VatStep>(making).hands_on = minutes(60);
    shop.add<VatHeat>(making).energy = Amount{Quantity::watt_hours(43'200'000), Unit::kwh, Mark::measured};
    auto& bill = shop.add<PaidOut>();
    bill.date = day_of(2026, 3, 3);
    bill.amount = Money::units(61'200);
    bill.dye_only = DyeOnly::vat;
    bill.avoidable = avoidable;
    const auto dried = shop.lot(powder);
    auto& drying = shop.add<Drying>();
    drying.date = day_of(2026, 3, 4);
    drying.lot = dried;
    drying.amount = grams(kLids);
    shop.add<DryingVat>(drying.key).vat = making;
    auto& test = shop.add<ShadeTest>();
    test.date = day_of(2026, 3, 5);
    test.lot = dried;
    test.against = bought;
    test.needed_for_same = Ratio{1, 1};

    const auto recipe = shop.recipe(kLids);
    for (const auto bar : {plain, own, other}) {
        auto& line = shop.add<RecipeColouring>(recipe);
        line.bar = bar;
        line.colouring = bar == plain ? Colouring::plain : bar == own ? Colouring::own : Colouring::bought;
        if (bar == plain) continue;
        line.colour = lid;
        line.dose = grams(kLids);
    }
    const auto batch = shop.batch(day_of(2026, 4, 1), recipe, own);
    shop.uses<BatchUse>(batch, powder, grams(kLids));
    shop.cut(day_of(2026, 4, 2), batch, kLids, 0, day_of(2026, 5, 1));
    for (const auto bar : {plain, own, other}) {
        auto& price = shop.add<Price>();
        price.from = day_of(2026, 1, 1);
        price.bar = bar;
        price.shelf = Money::units(5);
    }
    const Day as_of = day_of(2026, 12, 31);
    return verdict(shop.shop(), replay(shop.shop(), as_of), lid).figures;
}

}  // namespace

TEST_CASE("make or buy: none of the fixed overhead is saved by buying, so make") {
    const VerdictFigures lid = thermal_lid({0, 1});
    CHECK(*lid.season.bars == Approx(kLids));
    CHECK(*lid.home.full_cost_per_bar * kLids == Approx(201'600));
    CHECK(*lid.bought.full_cost_per_bar * kLids == Approx(210'000));
    CHECK(*lid.season.full_difference == Approx(8'400));
}

TEST_CASE("make or buy: the part of the fixed overhead that buying saves turns the answer") {
    const VerdictFigures lid = thermal_lid({12, 51});
    CHECK(*lid.home.full_cost_per_bar * kLids == Approx(216'000));
    CHECK(*lid.season.full_difference == Approx(-6'000));
}
