// What stands on a bill, and a later word on it: where does each amount go?
#include <doctest/doctest.h>

#include "domain/ledger/latest_price.h"
#include "domain/ledger/money_flow.h"
#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day day(int n) {
    return day_of(2026, 3, 1) + Days{n};
}

// 1 kg at 10.00 and 500 g at 20.00.
struct TwoLines : ShopBuilder {
    Key<Material> oil = material("oil", Purpose::oil);
    Key<Lot> first = ShopBuilder::delivery(day(0), oil, grams(1'000), Money::units(10));
    Key<Lot> second = lot(oil);
    TwoLines() {
        add<About>().currency = "EUR";
        auto& line = add<DeliveryLine>(head().key);
        line.lot = second;
        line.amount = grams(500);
        line.price = Money::units(20);
    }
    Delivery& head() { return all<Delivery>().back(); }
    CostCorrection& correct(Day on, Correction correction, Money amount) {
        auto& fact = add<CostCorrection>();
        fact.date = on;
        fact.delivery = head().key;
        fact.correction = correction;
        fact.amount = amount;
        return fact;
    }
    Money cost(Key<Lot> lot, Day on = day(9)) const { return state(shop(), replay(shop(), on), lot).cost.materials; }
    bool finds(FindingCode code) const { return has(replay(shop(), day(9)), code); }
};

}  // namespace

TEST_CASE("duty is added to what is shared and a discount taken from it, to the last millionth") {
    TwoLines b;
    b.head().carriage = Money::units(4);
    b.head().duty = Money::units(3);
    b.head().discount = Money::units(1);
    CHECK(b.cost(b.first) == Money::units(12));
    CHECK(b.cost(b.second) == Money::units(24));
    b.head().discount = Money::units(8);
    CHECK(b.cost(b.first) == Money::millionths(9'666'667));
    CHECK(b.cost(b.second) == Money::millionths(19'333'333));
    b.head().share_by = ShareBy::weight;
    CHECK(b.cost(b.first) == Money::millionths(9'333'334));
    CHECK(b.cost(b.second) == Money::millionths(19'666'666));
    CHECK_FALSE(b.finds(FindingCode::discount_more_than_goods));
}

TEST_CASE("a discount beyond the goods makes them free, and the rest is the period's") {
    TwoLines b;
    b.head().discount = Money::units(36);
    const Ledger ledger = replay(b.shop(), day(1));
    CHECK(state(b.shop(), ledger, b.first).cost.is_zero());
    CHECK(state(b.shop(), ledger, b.second).cost.is_zero());
    CHECK(materials(ledger, Boundary::corrections) == Money::units(-6));
    CHECK(has(ledger, FindingCode::discount_more_than_goods));
}

TEST_CASE("a line's tax is part of its cost, unless the shop is registered and gets it back") {
    TwoLines b;
    b.all<DeliveryLine>().front().tax = Ratio{20, 100};
    CHECK(b.cost(b.first) == Money::units(12));
    CHECK(b.cost(b.second) == Money::units(20));
    auto& registered = b.add<SalesTax>();
    registered.from = day(0);
    registered.rate = Ratio{20, 100};
    CHECK(b.cost(b.first) == Money::units(10));
    b.all<SalesTax>().front().from = day(1);
    CHECK(b.cost(b.first) == Money::units(12));
}

TEST_CASE("a bill in another currency is turned into the shop's once, by its rate") {
    TwoLines b;
    b.head().carriage = Money::units(3);
    b.head().currency = "SEK";
    SUBCASE("every amount, half away from nought") {
        b.head().rate = Ratio{89'765'433, 1'000'000'000};
        // 0.89765433, 1.79530866 and 0.269296299, each to the nearest millionth.
        CHECK(b.cost(b.first) + b.cost(b.second) == Money::millionths(897'654 + 1'795'309 + 269'296));
        CHECK_FALSE(b.finds(FindingCode::exchange_rate_unknown));
    }
    SUBCASE("no rate: one to one, and that is said") {
        CHECK(b.cost(b.first) == Money::units(11));
        CHECK(b.finds(FindingCode::exchange_rate_unknown));
    }
    SUBCASE("the shop's own currency needs none") {
        b.head().currency = "EUR";
        b.head().rate = Ratio{2, 1};
        CHECK(b.cost(b.first) == Money::units(11));
        CHECK_FALSE(b.finds(FindingCode::exchange_rate_unknown));
    }
    SUBCASE("an absurd rate is a finding and never an exception") {
        b.head().rate = Ratio{kLargestStatedBase, 1};
        CHECK(b.finds(FindingCode::too_large));
        CHECK(b.cost(b.second).is_zero());
    }
}

TEST_CASE("without a best before the material's shelf life counts from the delivery") {
    TwoLines b;
    b.at(b.oil).shelf_life_days = 30;
    b.all<DeliveryLine>().back().best_before = day(7);
    const Ledger ledger = replay(b.shop(), day(9));
    CHECK(state(b.shop(), ledger, b.first).best_before == day(30));
    CHECK(state(b.shop(), ledger, b.second).best_before == day(7));
}

TEST_CASE("a correction follows the goods that are still here; the rest is the period's that day") {
    TwoLines b;
    b.loss(day(1), b.oil, grams(250), LossReason::spilled).lot = b.first;
    b.correct(day(2), Correction::more, Money::units(6));
    const Ledger ledger = replay(b.shop(), day(2));
    CHECK(state(b.shop(), ledger, b.first).cost.materials == Money::units(9));  // 7.50, and 750 g of 2.00
    CHECK(state(b.shop(), ledger, b.second).cost.materials == Money::units(24));
    CHECK(materials(ledger, Boundary::corrections) == Money::hundredths(50));
    CHECK(materials(ledger, Boundary::delivered) == Money::units(-36));
    CHECK(materials(ledger, Boundary::lost) == Money::hundredths(250));
    CHECK(b.cost(b.first, day(1)) == Money::hundredths(750));
}

TEST_CASE("a credit note takes from the goods, but no more than they cost") {
    TwoLines b;
    auto& credit = b.correct(day(2), Correction::less, Money::units(6));
    CHECK(b.cost(b.first) == Money::units(8));
    CHECK(b.cost(b.second) == Money::units(16));
    credit.amount = Money::units(36);
    const Ledger ledger = replay(b.shop(), day(2));
    CHECK(state(b.shop(), ledger, b.first).cost.is_zero());
    CHECK(materials(ledger, Boundary::corrections) == Money::units(-6));
    CHECK(has(ledger, FindingCode::credit_more_than_cost));
}

TEST_CASE("lines that were all free share a correction equally") {
    TwoLines b;
    for (DeliveryLine& line : b.all<DeliveryLine>()) line.price = {};
    b.correct(day(2), Correction::more, Money::units(6));
    CHECK(b.cost(b.first) == Money::units(3));
    CHECK(b.cost(b.second) == Money::units(3));
}

TEST_CASE("a correction of what has not come is the period's, and that is said") {
    TwoLines b;
    b.correct(day(-1), Correction::more, Money::units(6));
    const Ledger early = replay(b.shop(), day(9));
    CHECK(has(early, FindingCode::correction_before_delivery));
    CHECK(materials(early, Boundary::corrections) == Money::units(6));
    CHECK(b.cost(b.first) == Money::units(10));

    const Key<Delivery> empty = b.add<Delivery>().key;
    b.at(empty).date = day(-2);
    b.all<CostCorrection>().front().delivery = empty;
    CHECK(b.finds(FindingCode::correction_of_nothing));
}

TEST_CASE("money out for goods is the bill in the shop's money, with later words on it") {
    TwoLines b;
    b.head().carriage = Money::units(3);
    b.head().duty = Money::units(4);
    b.head().discount = Money::units(1);
    b.head().currency = "SEK";
    b.head().rate = Ratio{1, 10};
    b.all<DeliveryLine>().front().tax = Ratio{20, 100};
    b.correct(day(2), Correction::less, Money::units(2));
    const MoneyFlow flow = money_flow(b.shop(), replay(b.shop(), day(9)), {day(0), day(9)});
    CHECK(flow.out[static_cast<std::size_t>(PaidFor::carriage)] == Money::hundredths(30));
    CHECK(flow.out[static_cast<std::size_t>(PaidFor::goods)] == Money::hundredths(320 + 30 - 200));
    CHECK(latest_price(b.shop(), b.oil, day(9))->amount == Money::units(2));
}
