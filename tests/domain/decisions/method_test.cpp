// What the maker's method says of a vat: its steps, its bands, and the one to begin with.
#include <doctest/doctest.h>

#include <numeric>

#include "domain/decisions/method_bands.h"
#include "domain/decisions/starter_methods.h"
#include "domain/decisions/steps_as_done.h"
#include "tests/support/shop_builder.h"

using namespace dyestead;
using namespace dyestead::test;

namespace {

// Strain 10 min and 4 min a kg; watch the pot 20 min; wash 5 min, four times.
struct Pot : ShopBuilder {
    Key<Material> leaf = made("leaf", MaterialKind::harvest);
    Key<Method> method = [this] {
        auto& fact = add<Method>();
        fact.low = grams(1);
        fact.high = grams(4);
        return fact.key;
    }();
    Key<MethodStep> strain = step("strain");
    Key<MethodStep> watch = step("watch");
    Key<MethodStep> wash = step("wash");
    Key<Vat> vat = [this] {
        auto& fact = add<Vat>();
        fact.method = method;
        const auto key = fact.key;
        uses<VatUse>(key, leaf, grams(5'000));
        return key;
    }();

    Pot() {
        at(strain).hands_on = minutes(10);
        at(strain).hands_on_per_kg = minutes(4);
        at(watch).watch = Watch::attended;
        at(watch).waiting = minutes(20);
        at(wash).hands_on = minutes(5);
        at(wash).waiting = minutes(200);  // nobody stands beside it
        at(wash).times = 4;
    }
    Key<MethodStep> step(std::string what) {
        auto& fact = add<MethodStep>(method);
        fact.what = std::move(what);
        return fact.key;
    }
    VatStep& note(Key<MethodStep> of) {
        auto& fact = add<VatStep>(vat);
        fact.method_step = at(of).position;
        return fact;
    }
    std::vector<StepDone> steps() { return steps_as_done(shop(), at(vat)); }
};

Minutes sum(const std::vector<StepDone>& steps) {
    return std::accumulate(
        steps.begin(), steps.end(), Minutes{}, [](Minutes all, const StepDone& step) { return all + step.hands_on; });
}

}  // namespace

TEST_CASE("time told for the whole vat goes over the method's steps by the method's own minutes") {
    Pot pot;
    pot.at(pot.vat).hands_on = minutes(100);  // the method's own: 30, none, 20
    pot.at(pot.vat).waiting = minutes(33);
    const auto steps = pot.steps();
    REQUIRE(steps.size() == 3);
    CHECK(steps[0].hands_on == Minutes::whole(60));
    CHECK(steps[1].hands_on == Minutes{});
    CHECK(steps[2].hands_on == Minutes::whole(40));
    CHECK(steps[1].waiting == Minutes::whole(33));
    CHECK(steps[2].waiting == Minutes{});
    CHECK(steps[0].what == "strain");
    CHECK(steps[0].from_method);
}

TEST_CASE("the washes the maker counted go before the method's; the total is never bent") {
    Pot pot;
    pot.at(pot.vat).hands_on = minutes(100);
    pot.at(pot.vat).washes = 14;  // 30 and 70 of the method's own
    CHECK(pot.steps()[2].hands_on == Minutes::whole(70));
    pot.at(pot.vat).washes = 5;
    pot.at(pot.vat).hands_on = minutes(7);
    CHECK(sum(pot.steps()) == Minutes::whole(7));
}

TEST_CASE("a method without minutes shares equally; without a method nothing is parted") {
    Pot pot;
    pot.at(pot.vat).hands_on = minutes(90);
    for (const auto step : {pot.strain, pot.watch, pot.wash}) {
        pot.at(step).hands_on.reset();
        pot.at(step).hands_on_per_kg.reset();
    }
    for (const StepDone& step : pot.steps()) CHECK(step.hands_on == Minutes::whole(30));
    pot.at(pot.vat).method.reset();
    CHECK(pot.steps().empty());
}

TEST_CASE("steps as they were noted stand") {
    Pot pot;
    pot.at(pot.vat).hands_on = minutes(100);
    pot.note(pot.watch).acidity = Acidity{900};
    CHECK(pot.steps()[0].from_method);
    pot.note(pot.strain).hands_on = minutes(12);
    const auto steps = pot.steps();
    REQUIRE(steps.size() == 1);
    CHECK(!steps[0].from_method);
    CHECK(steps[0].hands_on == Minutes::whole(12));
}

TEST_CASE("a reading outside the method's band is named with the band; on its edge it is inside") {
    Pot pot;
    pot.at(pot.watch).temperature_low = Temperature{780};
    pot.at(pot.watch).temperature_high = Temperature{820};
    pot.at(pot.wash).acidity_high = Acidity{800};
    pot.note(pot.watch).temperature = Temperature{820};
    pot.note(pot.watch).temperature = Temperature{821};
    pot.note(pot.watch).temperature = Temperature{700};
    pot.note(pot.wash).acidity = Acidity{801};
    pot.note(pot.strain).temperature = Temperature{999};      // no band
    pot.add<VatStep>(pot.vat).temperature = Temperature{10};  // of no step of the method
    const auto found = readings_outside(pot.shop(), pot.at(pot.vat));
    REQUIRE(found.size() == 3);
    CHECK(found[0].band == Band::temperature);
    CHECK(found[0].found == doctest::Approx(82.1));
    CHECK(*found[0].high == doctest::Approx(82));
    CHECK(found[0].step == 2);
    CHECK(found[1].found == doctest::Approx(70));
    CHECK(found[2].band == Band::acidity);
    CHECK(found[2].what == "wash");
    CHECK(!found[2].low);
    CHECK(*found[2].high == doctest::Approx(8));
}

TEST_CASE("a wait outside the method's band is named, as noted or by the clock") {
    Pot pot;
    const auto at = [](int hour, int minute) { return Moment{day_of(2026, 7, 4), hour * 60 + minute, 60}; };
    pot.at(pot.watch).waiting = minutes(120);
    pot.at(pot.watch).waiting_high = minutes(180);
    pot.at(pot.strain).waiting = minutes(30);  // no band: as long as it takes
    pot.note(pot.watch).waiting = minutes(180);
    pot.note(pot.watch).waiting = minutes(181);
    pot.note(pot.strain).waiting = minutes(300);
    auto& timed = pot.note(pot.watch);
    timed.begun = at(10, 0);
    timed.hands_on = minutes(10);
    pot.note(pot.wash).begun = at(11, 30);  // an hour and twenty minutes later, the hands' time aside
    pot.note(pot.watch).begun = at(12, 0);  // the last: nobody knows for how long
    const auto found = readings_outside(pot.shop(), pot.at(pot.vat));
    REQUIRE(found.size() == 2);
    CHECK(found[0].band == Band::waiting);
    CHECK(found[0].step == 2);
    CHECK(found[0].found == doctest::Approx(181));
    CHECK(*found[0].low == doctest::Approx(120));
    CHECK(*found[0].high == doctest::Approx(180));
    CHECK(found[1].step == 4);
    CHECK(found[1].found == doctest::Approx(80));
}

TEST_CASE("a yield outside the method's is named; a failed vat and harvest not weighed say nothing of it") {
    Pot pot;
    const Lot lot;
    FinishedVat vat;
    vat.vat = &pot.at(pot.vat);
    vat.kg = 5;
    CHECK(!yield_outside(pot.shop(), vat));
    vat.powder.push_back({&lot, 3, 0});
    vat.grams = 3;
    const auto low = yield_outside(pot.shop(), vat);
    REQUIRE(low);
    CHECK(low->found == doctest::Approx(0.6));
    CHECK(*low->low == doctest::Approx(1));
    vat.grams = 20;
    CHECK(!yield_outside(pot.shop(), vat));
    vat.grams = 21;
    CHECK(yield_outside(pot.shop(), vat));
    vat.kg = 0;
    CHECK(!yield_outside(pot.shop(), vat));
}

TEST_CASE("the method to begin with says what is common practice") {
    ShopBuilder b;
    const auto soda = b.material("soda ash", Purpose::alkali);
    const StarterMethod hot = hot_method_for_leaf(soda);
    const auto& steps = hot.steps;
    REQUIRE(steps.size() == 11);
    for (std::size_t i = 0; i < steps.size(); ++i) {
        CHECK(steps[i].position == static_cast<int>(i) + 1);
        CHECK(!steps[i].what.empty());
    }
    const auto within = [](const MethodStep& step, int degrees) {
        return *step.temperature_low < Temperature{degrees * 10} && Temperature{degrees * 10} < *step.temperature_high;
    };
    CHECK(within(steps[0], 90));
    CHECK(within(steps[1], 80));
    CHECK(steps[1].waiting->time == Minutes::whole(10));
    CHECK(steps[1].watch == Watch::attended);
    CHECK(within(steps[2], 55));
    CHECK(steps[2].hands_on->time == Minutes::whole(5));
    CHECK(steps[4].temperature_high == Temperature{500});
    CHECK(!steps[4].temperature_low);
    CHECK(*steps[4].acidity_low < Acidity{900});
    CHECK(Acidity{900} < *steps[4].acidity_high);
    const auto lasts = [](Minutes time, std::int64_t low, std::int64_t high) {
        return Minutes::whole(low) <= time && time <= Minutes::whole(high);
    };
    CHECK(lasts(steps[5].hands_on->time, 10, 15));
    CHECK(lasts(steps[6].waiting->time, 120, 180));
    CHECK(lasts(steps[7].waiting->time, 120, 180));
    CHECK(lasts(steps[8].waiting->time, 120, 120));
    CHECK(lasts(steps[9].waiting->time, 120, 300));
    CHECK(steps[9].times == 5);
    CHECK(lasts(steps[10].waiting->time, 24 * 60, 3 * 24 * 60));
    CHECK(steps[10].watch == Watch::unattended);
    REQUIRE(hot.uses.size() == 1);
    CHECK(hot.uses[0].material == soda);
    CHECK(hot.uses[0].amount.quantity == Quantity::microlitres(15'000));
    CHECK(hot.uses[0].amount.unit == Unit::tsp);
    CHECK(hot.uses[0].per == Per::vat);
    CHECK(hot.method.low->quantity == Quantity::grams(1));
    CHECK(hot.method.high->quantity == Quantity::grams(4));
}
