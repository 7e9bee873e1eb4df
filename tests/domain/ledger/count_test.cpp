// A stock-take: what do the books do when the shelf says something else?
#include <doctest/doctest.h>

#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day day(int n) {
    return day_of(2026, 3, 1) + Days{n};
}

struct Shelf : ShopBuilder {
    Key<Material> oil = material("oil", Purpose::oil);

    CountLine& count(Day on, Amount counted, std::optional<Key<Lot>> lot = {}) {
        auto& fact = add<Count>();
        fact.date = on;
        return also(fact.key, counted, lot);
    }
    CountLine& also(Key<Count> head, std::optional<Amount> counted, std::optional<Key<Lot>> lot = {}) {
        auto& line = add<CountLine>(head);
        line.material = oil;
        line.counted = counted;
        line.lot = lot;
        return line;
    }
    Ledger books(Day on = day(20)) const { return replay(shop(), on); }
    std::int64_t left(Key<Lot> lot) const { return state(shop(), books(), lot).left; }
};

}  // namespace

TEST_CASE("less than the books say is a loss, by rule or from the lot") {
    Shelf b;
    const auto old = b.delivery(day(0), b.oil, grams(100), Money::units(1));
    const auto young = b.delivery(day(1), b.oil, grams(100), Money::units(3));
    SUBCASE("of all lots together: by rule") {
        b.count(day(5), grams(150));
        CHECK(b.left(old) == 50'000);
        CHECK(b.left(young) == 100'000);
        CHECK(materials(b.books(), Boundary::lost) == Money::hundredths(50));
    }
    SUBCASE("of a lot: from it") {
        b.count(day(5), grams(50), young);
        CHECK(b.left(old) == 100'000);
        CHECK(b.left(young) == 50'000);
        CHECK(materials(b.books(), Boundary::lost) == Money::hundredths(150));
    }
    SUBCASE("nought is none left, and blank is not counted") {
        b.count(day(5), grams(0), old).counted = std::nullopt;
        CHECK(b.left(old) == 100'000);
        b.count(day(6), grams(0), old);
        CHECK(b.left(old) == 0);
        CHECK(b.left(young) == 100'000);
    }
    SUBCASE("a reason that is a gift") {
        b.count(day(5), grams(150)).reason = LossReason::own_use;
        CHECK(materials(b.books(), Boundary::given) == Money::hundredths(50));
        CHECK(materials(b.books(), Boundary::lost).is_zero());
    }
    SUBCASE("as usual losses go, the usual part stays in the cost of what is left") {
        auto& usual = b.add<NormalLoss>();
        usual.from = day(0);
        usual.rate = Ratio{50, 100};
        b.count(day(5), grams(150));
        CHECK(b.left(old) == 50'000);
        CHECK(materials(b.books(), Boundary::lost).is_zero());
    }
    CHECK(b.books().findings.empty());
}

TEST_CASE("a count is of the end of the day, whatever else was done on it") {
    Shelf b;
    const auto lot = b.delivery(day(0), b.oil, grams(100), Money::units(1));
    b.count(day(5), grams(60));
    b.loss(day(5), b.oil, grams(40), LossReason::spilled);
    CHECK(b.left(lot) == 60'000);
    CHECK(materials(b.books(), Boundary::lost) == Money::hundredths(40));
}

TEST_CASE("more than the books say is a loss of less than nothing, at the latest goods' cost") {
    Shelf b;
    const auto old = b.delivery(day(0), b.oil, grams(100), Money::units(1));
    const auto young = b.delivery(day(1), b.oil, grams(100), Money::units(3));
    SUBCASE("of all lots together: in the newest that has goods") {
        b.count(day(5), grams(250));
        CHECK(b.left(young) == 150'000);
        CHECK(state(b.shop(), b.books(), young).cost.materials == Money::hundredths(450));
    }
    SUBCASE("of a lot: in it") {
        b.count(day(5), grams(150), old);
        CHECK(b.left(old) == 150'000);
        CHECK(state(b.shop(), b.books(), old).cost.materials == Money::hundredths(250));
    }
    CHECK(materials(b.books(), Boundary::lost) == Money::hundredths(-150));
    const QuantityPartition oil = quantity_partitions(b.shop(), b.books(), day(20))[0];
    CHECK(oil.in == 200'000);
    CHECK(oil.lost == -50'000);
    CHECK(oil.stock == 250'000);
    CHECK(b.books().findings.empty());
}

TEST_CASE("found when all lots are used up: in the newest there ever was, as it was") {
    Shelf b;
    b.delivery(day(0), b.oil, grams(100), Money::units(1));
    const auto young = b.delivery(day(1), b.oil, grams(100), Money::units(3));
    b.all<DeliveryLine>().back().best_before = day(90);
    b.loss(day(2), b.oil, grams(200), LossReason::spilled);
    b.count(day(5), grams(10));
    const LotState found = state(b.shop(), b.books(), young);
    CHECK(found.left == 10'000);
    CHECK(found.best_before == day(90));
    CHECK(found.made == day(1));
}

TEST_CASE("counted goods settle what was used before it came, and the books hold what was counted") {
    Shelf b;
    const auto lot = b.delivery(day(0), b.oil, grams(100), Money::units(1));
    b.loss(day(1), b.oil, grams(150), LossReason::given);
    SUBCASE("found") {
        b.count(day(5), grams(30));
        const Ledger ledger = b.books();
        CHECK(b.left(lot) == 30'000);
        CHECK(materials(ledger, Boundary::provisional).is_zero());
        CHECK(materials(ledger, Boundary::lost) == Money::hundredths(-80));
        CHECK(materials(ledger, Boundary::shortfall).is_zero());
        CHECK(state(b.shop(), ledger, lot).cost.materials == Money::hundredths(30));
    }
    SUBCASE("none there, as the books say: the delivery may still be missing") {
        b.count(day(5), grams(0));
        CHECK(materials(b.books(), Boundary::provisional) == Money::hundredths(-50));
    }
}

TEST_CASE("what was found adds nothing to the losses that are usual") {
    Shelf b;
    auto& usual = b.add<NormalLoss>();
    usual.from = day(0);
    usual.rate = Ratio{10, 100};
    b.delivery(day(0), b.oil, grams(100), Money::units(1));
    b.count(day(1), grams(200));
    b.loss(day(2), b.oil, grams(20), LossReason::spilled);
    // 10 g are usual; 10 of the 190 g that carry 2.00 are not.
    CHECK(materials(b.books(), Boundary::lost) == Money::millionths(-1'000'000 + 105'263));
}

TEST_CASE("counts that cannot stand are said, and the first stands") {
    Shelf b;
    const auto lot = b.delivery(day(0), b.oil, grams(100), Money::units(1));
    SUBCASE("the material twice") {
        b.also(b.count(day(5), grams(60)).head, grams(30));
        CHECK(has(b.books(), FindingCode::counted_twice));
        CHECK(b.left(lot) == 60'000);
    }
    SUBCASE("a lot, and then all of the material") {
        b.also(b.count(day(5), grams(60), lot).head, grams(30));
        CHECK(has(b.books(), FindingCode::counted_twice));
        CHECK(b.left(lot) == 60'000);
    }
    SUBCASE("all of the material, and then a lot") {
        b.also(b.count(day(5), grams(60)).head, grams(30), lot);
        CHECK(has(b.books(), FindingCode::counted_twice));
        CHECK(b.left(lot) == 60'000);
    }
    SUBCASE("a lot of another material") {
        const auto lye = b.material("lye", Purpose::lye);
        b.count(day(5), grams(60), lot).material = lye;
        CHECK(has(b.books(), FindingCode::lot_of_another_material));
        CHECK(b.left(lot) == 100'000);
    }
    SUBCASE("found, and no lot of it ever was") {
        b.count(day(5), grams(60)).material = b.material("lye", Purpose::lye);
        CHECK(has(b.books(), FindingCode::found_without_lot));
        CHECK(materials(b.books(), Boundary::lost).is_zero());
    }
}

TEST_CASE("two lots of a material may both be counted") {
    Shelf b;
    const auto old = b.delivery(day(0), b.oil, grams(100), Money::units(1));
    const auto young = b.delivery(day(1), b.oil, grams(100), Money::units(3));
    b.also(b.count(day(5), grams(60), old).head, grams(110), young);
    CHECK(b.left(old) == 60'000);
    CHECK(b.left(young) == 110'000);
    CHECK(b.books().findings.empty());
}
