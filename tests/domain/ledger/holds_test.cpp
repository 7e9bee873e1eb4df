#include "domain/ledger/holds.h"

#include <doctest/doctest.h>

#include "domain/decisions/shelf.h"
#include "tests/domain/ledger/ledger_support.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

constexpr Day day(int n) {
    return day_of(2026, 3, 1) + Days{n};
}

// Two batches of a kilogram of oil, each from a delivery of its own; the lye is right: 128.676 g.
struct Bench : ShopBuilder {
    Key<Material> oil = this->ShopBuilder::oil("oil", {190, 1});
    Key<Material> lye = material("lye", Purpose::lye);
    Key<Material> bar = made("bar", MaterialKind::bar);
    Key<Recipe> loaf = recipe(10);
    Key<Lot> old_oil = delivery(day(0), oil, grams(1'000), Money::units(10));
    Key<Lot> new_oil = delivery(day(0), oil, grams(1'000), Money::units(10));
    Key<Lot> soda = delivery(day(0), lye, grams(5'000), Money::units(10));
    Key<Batch> one = pour(old_oil, 128'676);
    Key<Batch> two = pour(new_oil, 128'676);
    Key<Lot> first = cut(day(2), one, 10, 0, day(30));
    Key<Lot> second = cut(day(2), two, 10, 0, day(31));

    Key<Batch> pour(Key<Lot> from, std::int64_t milligrams_of_lye) {
        const auto poured = batch(day(1), loaf, bar);
        uses<BatchUse>(poured, oil, grams(1'000), from);
        uses<BatchUse>(poured, lye, {Quantity::milligrams(milligrams_of_lye), Unit::g, Mark::measured});
        return poured;
    }
    template <class Fact>
    Fact& on(int when, Key<Lot> lot) {
        auto& fact = add<Fact>();
        fact.date = day(when);
        fact.lot = lot;
        fact.why = "to be looked at";
        return fact;
    }
    void weigh_lye(Key<Batch> batch, std::int64_t milligrams) {
        for (auto& use : all<BatchUse>())
            if (use.head == batch && use.material == lye)
                use.amount = {Quantity::milligrams(milligrams), Unit::g, Mark::measured};
    }
    std::optional<Held> why(Key<Lot> lot, int when) {
        const Ledger ledger = replay(shop(), day(when));
        return holds(shop(), ledger).why(static_cast<std::uint32_t>(shop().find(lot) - all<Lot>().data()), day(when));
    }
};

}  // namespace

TEST_CASE("a recalled oil holds the bars that were poured with it, from that day on, and no others") {
    Bench b;
    b.on<Hold>(40, b.old_oil);
    CHECK_FALSE(b.why(b.first, 39));
    REQUIRE(b.why(b.first, 40));
    CHECK(b.why(b.first, 40)->why == HeldFor::hold);
    CHECK(b.shop().all<Lot>()[b.why(b.first, 40)->at].key == b.old_oil);
    CHECK_FALSE(b.why(b.second, 40));
    b.on<Hold>(41, b.soda);  // in both
    CHECK(b.why(b.second, 41));
}

TEST_CASE("bars released are free though the oil is not; a later hold holds them again") {
    Bench b;
    b.on<Hold>(40, b.old_oil);
    b.on<Release>(42, b.first);
    CHECK(b.why(b.first, 41));
    CHECK_FALSE(b.why(b.first, 42));
    CHECK(b.why(b.old_oil, 42));
    b.on<Hold>(43, b.first);
    CHECK(b.why(b.first, 43));
}

TEST_CASE("the oil released frees all that was made of it") {
    Bench b;
    b.on<Hold>(40, b.old_oil);
    b.on<Release>(45, b.old_oil);
    CHECK(b.why(b.first, 44));
    CHECK_FALSE(b.why(b.first, 45));
}

TEST_CASE("lye off by more than the scale's doubt holds the bars by itself") {
    Bench b;
    CHECK_FALSE(b.why(b.first, 3));
    b.weigh_lye(b.one, 131'200);  // 2.5 g, 1.96 %: within
    CHECK_FALSE(b.why(b.first, 3));
    b.weigh_lye(b.one, 131'300);  // 2.6 g, 2.04 %
    REQUIRE(b.why(b.first, 3));
    CHECK(b.why(b.first, 3)->why == HeldFor::lye_off);
    b.weigh_lye(b.one, 120'000);
    CHECK(b.why(b.first, 3)->why == HeldFor::lye_off);
    b.weigh_lye(b.one, 135'449);  // all of the oil
    CHECK(b.why(b.first, 3)->why == HeldFor::no_superfat);
    b.weigh_lye(b.one, 0);  // nothing put down: not judged
    CHECK_FALSE(b.why(b.first, 3));
}

TEST_CASE("a batch weighed like the one before it is held like it, and one weighed otherwise is not") {
    Bench b;
    b.weigh_lye(b.one, 120'000);
    CHECK(b.why(b.first, 40)->why == HeldFor::lye_off);
    CHECK_FALSE(b.why(b.second, 40));
    b.weigh_lye(b.two, 120'000);
    CHECK(b.why(b.first, 40)->fact == ref(b.at(b.one)));
    CHECK(b.why(b.second, 40)->fact == ref(b.at(b.two)));
    b.weigh_lye(b.one, 128'676);
    CHECK_FALSE(b.why(b.first, 40));
    CHECK(b.why(b.second, 40));
    // As many grams of the same, in another batch of the kind, but for twice the loaves: so much more may it be off.
    b.weigh_lye(b.one, 132'000);
    b.weigh_lye(b.two, 132'000);
    CHECK(b.why(b.first, 40));
    CHECK(b.why(b.second, 40));
    b.at(b.two).loaves = 2;
    CHECK(b.why(b.first, 40));
    CHECK_FALSE(b.why(b.second, 40));
}

TEST_CASE("what was poured off is held with what it came from, and its lye is judged by its share") {
    Bench b;
    const auto part = b.batch(day(1), b.loaf, b.bar);
    b.at(part).split_from = b.one;
    b.at(part).split_share = Ratio{1, 4};
    const auto bars = b.cut(day(2), part, 3, 0, day(30));
    CHECK_FALSE(b.why(bars, 3));
    b.on<Hold>(4, b.old_oil);
    CHECK(b.why(bars, 4));
}

TEST_CASE("a sale passes held bars by while there are others, and says so when there are none") {
    Bench b;
    b.on<Hold>(40, b.old_oil);
    b.sold(b.sale(day(50)), b.bar, 10, Money::units(5));
    Ledger ledger = replay(b.shop(), day(50));
    CHECK(state(b.shop(), ledger, b.first).left == 10'000);
    CHECK(state(b.shop(), ledger, b.second).left == 0);
    CHECK_FALSE(has(ledger, FindingCode::sold_while_held));
    b.sold(b.sale(day(51)), b.bar, 1, Money::units(5));
    ledger = replay(b.shop(), day(51));
    CHECK(state(b.shop(), ledger, b.first).left == 9'000);
    CHECK(has(ledger, FindingCode::sold_while_held));
}

TEST_CASE("the shelf tells bars in cure, ready, held and past their best, and what they weigh by now") {
    Bench b;
    b.at(b.loaf).best_days = 100;
    const auto states = [&](int when) {
        const Ledger ledger = replay(b.shop(), day(when));
        return shelf({b.shop(), ledger});
    };
    CHECK(states(29).bars(BarState::in_cure) == 20'000);
    CHECK(states(30).bars(BarState::ready) == 10'000);
    CHECK(states(103).bars(BarState::past_best) == 20'000);
    b.on<Hold>(30, b.first);
    CHECK(states(30).bars(BarState::held) == 10'000);
    CHECK(states(30).bars(BarState::ready) == 0);
    CHECK_FALSE(states(30).lots[0].weight);

    const auto weigh = [&](int when, int bars, std::int64_t grams_together) {
        auto& fact = b.add<Weighing>();
        fact.date = day(when);
        fact.lot = b.first;
        fact.bars = bars;
        fact.total = grams(grams_together);
    };
    weigh(3, 10, 1'100);
    weigh(25, 5, 495);
    const auto weight = states(30).lots[0].weight;
    REQUIRE(weight);
    CHECK(weight->per_bar == Ratio{99'000, 1});
    CHECK(*weight->lost == Ratio{1, 10});
    CHECK(*weight->below_declared);  // 100 g is on the label
}
