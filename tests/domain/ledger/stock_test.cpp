// Which lot leaves, what it costs, and what happens when there is not enough.
#include <doctest/doctest.h>

#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {
constexpr Day kMarch = day_of(2026, 3, 1);
constexpr Day day(int n) {
    return kMarch + Days{n};
}
}  // namespace

TEST_CASE("postage belongs to the goods, by value, to the last millionth") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    const auto first = b.delivery(day(0), oil, grams(1'000), Money::units(10), Money::units(1));
    const Key<Delivery> head = b.all<Delivery>().back().key;
    const auto second = b.lot(oil);
    auto& line = b.add<DeliveryLine>(head);
    line.lot = second;
    line.amount = grams(500);
    line.price = Money::units(20);
    const Ledger ledger = replay(b.shop(), day(1));
    CHECK(state(b.shop(), ledger, first).cost.materials == Money::millionths(10'333'333));
    CHECK(state(b.shop(), ledger, second).cost.materials == Money::millionths(20'666'667));

    b.all<Delivery>().back().share_by = ShareBy::weight;
    const Ledger by_weight = replay(b.shop(), day(1));
    CHECK(state(b.shop(), by_weight, first).cost.materials == Money::millionths(10'666'666));
}

TEST_CASE("the opened lot goes first, then the first to expire, then the oldest; a named lot before all") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    const auto old = b.delivery(day(0), oil, grams(100), Money::units(1));
    const auto expiring = b.delivery(day(1), oil, grams(100), Money::units(2));
    b.all<DeliveryLine>().back().best_before = day(100);
    const auto young = b.delivery(day(2), oil, grams(100), Money::units(3));

    SUBCASE("first to expire, though not the oldest") {
        b.loss(day(3), oil, grams(10), LossReason::spilled);
        const Ledger ledger = replay(b.shop(), day(9));
        CHECK(state(b.shop(), ledger, expiring).left == 90'000);
    }
    SUBCASE("the opened lot stays the one in use") {
        b.loss(day(3), oil, grams(10), LossReason::spilled).lot = young;
        b.loss(day(4), oil, grams(10), LossReason::spilled);
        const Ledger ledger = replay(b.shop(), day(9));
        CHECK(state(b.shop(), ledger, young).left == 80'000);
        CHECK(state(b.shop(), ledger, expiring).left == 100'000);
    }
    SUBCASE("then the oldest") {
        b.loss(day(3), oil, grams(150), LossReason::spilled);
        const Ledger ledger = replay(b.shop(), day(9));
        CHECK(state(b.shop(), ledger, expiring).left == 0);
        CHECK(state(b.shop(), ledger, old).left == 50'000);
        CHECK(materials(ledger, Boundary::lost) == Money::hundredths(250));
    }
}

TEST_CASE("what is used before it came is costed at the last price and settled on the day it comes") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    b.delivery(day(0), oil, grams(100), Money::units(1));
    b.loss(day(1), oil, grams(150), LossReason::spilled);
    const auto late = b.delivery(day(5), oil, grams(100), Money::units(3));

    const Ledger before = replay(b.shop(), day(4));
    CHECK(has(before, FindingCode::more_used_than_there));
    CHECK(materials(before, Boundary::lost) == Money::hundredths(150));
    CHECK(materials(before, Boundary::provisional) == Money::hundredths(-50));

    const Ledger after = replay(b.shop(), day(5));
    CHECK(materials(after, Boundary::provisional) == Money{});
    CHECK(materials(after, Boundary::lost) == Money::hundredths(150));
    CHECK(materials(after, Boundary::shortfall) == Money::units(1));  // 50 g cost 1.50, not 0.50
    CHECK(state(b.shop(), after, late).left == 50'000);
    CHECK(state(b.shop(), after, late).cost.materials == Money::hundredths(150));
}

TEST_CASE("goods used before any price of them is known cost nothing yet, and that is said") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    b.loss(day(1), oil, grams(10), LossReason::spilled);
    const Ledger ledger = replay(b.shop(), day(1));
    CHECK(has(ledger, FindingCode::no_cost_known));
    CHECK(materials(ledger, Boundary::lost) == Money{});
}

TEST_CASE("usual losses stay in the cost of what is left; only the excess is expensed") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    auto& usual = b.add<NormalLoss>();
    usual.from = day(0);
    usual.rate = Ratio{10, 100};
    const auto lot = b.delivery(day(0), oil, grams(100), Money::units(9));
    b.loss(day(1), oil, grams(10), LossReason::spilled);
    CHECK(materials(replay(b.shop(), day(1)), Boundary::lost) == Money{});
    b.loss(day(2), oil, grams(30), LossReason::spilled);
    const Ledger ledger = replay(b.shop(), day(2));
    CHECK(materials(ledger, Boundary::lost) == Money::units(3));  // 30 of the 90 g that carry 9.00
    CHECK(state(b.shop(), ledger, lot).cost.materials == Money::units(6));
}

TEST_CASE("gifts are given, not lost; paid for and not there is lost") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    b.delivery(day(0), oil, grams(100), Money::units(1));
    b.loss(day(1), oil, grams(25), LossReason::sample);
    b.delivery(day(2), oil, grams(0), Money::units(7));
    const Ledger ledger = replay(b.shop(), day(2));
    CHECK(materials(ledger, Boundary::given) == Money::hundredths(25));
    CHECK(materials(ledger, Boundary::lost) == Money::units(7));
    CHECK(has(ledger, FindingCode::nothing_in_it));
}

TEST_CASE("a lot of another material and an amount with no density are said, and do no harm") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    const auto lye = b.material("lye", Purpose::lye);
    const auto lot = b.delivery(day(0), lye, grams(100), Money::units(1));
    b.delivery(day(0), oil, grams(100), Money::units(2));
    b.loss(day(1), oil, grams(50), LossReason::spilled).lot = lot;
    b.loss(day(2), oil, Amount{Quantity::microlitres(1'000), Unit::ml, Mark::measured}, LossReason::spilled);
    const Ledger ledger = replay(b.shop(), day(2));
    CHECK(has(ledger, FindingCode::lot_of_another_material));
    CHECK(has(ledger, FindingCode::amount_not_convertible));
    CHECK(materials(ledger, Boundary::lost) == Money::units(1));
    CHECK(state(b.shop(), ledger, lot).left == 100'000);
}

TEST_CASE("sums past the gate are left out with a finding, and every other number is still right") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    const auto soap = b.material("lye", Purpose::lye);
    for (int i = 0; i < 5; ++i) b.delivery(day(i), oil, grams(1), kLargestStatedMoney);
    const auto small = b.delivery(day(6), soap, grams(10), Money::units(2));
    const Ledger ledger = replay(b.shop(), day(6));
    CHECK(has(ledger, FindingCode::too_large));
    CHECK(state(b.shop(), ledger, small).left == 10'000);
    const CostPartition terms = cost_partition(b.shop(), ledger, day(6));
    CHECK(terms.in == terms.out());
}

TEST_CASE("absurd figures that pass one field at a time are findings, never an exception") {
    ShopBuilder b;
    const auto oil = b.material("oil", Purpose::oil);
    b.at(oil).held_as = HeldAs::volume;
    b.at(oil).density = Ratio{1, 100'000'000'000};
    b.delivery(day(0), oil, grams(1'000'000), Money::units(1));
    CHECK(has(replay(b.shop(), day(1)), FindingCode::too_large));

    ShopBuilder s;
    const auto bar = s.made("bar", MaterialKind::bar);
    s.already_here(day(0), bar, pieces(1'000'000), Money::units(1));
    s.sold(s.sale(day(1)), bar, 1'000'000, kLargestStatedMoney);
    CHECK(has(replay(s.shop(), day(1)), FindingCode::too_large));

    ShopBuilder v;
    auto& tariff = v.add<Tariff>();
    tariff.from = day(0);
    tariff.per_kwh = kLargestStatedMoney;
    auto& vat = v.add<Vat>();
    vat.date = day(1);
    const Key<Vat> key = vat.key;
    v.add<VatHeat>(key).energy = Amount{Quantity::watt_hours(kLargestStatedBase), Unit::wh, Mark::measured};
    auto& pieces_of_water = v.add<VatHeat>(key);
    pieces_of_water.water = pieces(3);
    pieces_of_water.heated_from = Temperature{100};
    pieces_of_water.heated_to = Temperature{900};
    const Ledger ledger = replay(v.shop(), day(1));
    CHECK(has(ledger, FindingCode::too_large));
    CHECK(has(ledger, FindingCode::heat_not_complete));
}
