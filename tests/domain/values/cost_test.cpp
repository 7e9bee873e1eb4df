#include "domain/values/cost.h"

#include <doctest/doctest.h>

#include <random>

#include "tests/support/operators.h"

using namespace dyestead;
using namespace dyestead::test;

static_assert(std::is_trivially_copyable_v<Cost>);
static_assert(sizeof(Cost) == 40);
static_assert(!std::is_convertible_v<Money, Cost>);
static_assert(!Adds<Cost, Money>);
static_assert(!Adds<Cost, Minutes>);
static_assert(!Compares<Cost, Cost>);  // cash against full: say which
static_assert(Cost{}.is_zero());

namespace {
constexpr Cost kCost{Money::units(5), Money::units(7), Money::units(11), Money::units(13), Minutes::whole(17)};
}

TEST_CASE("cash cost leaves out labour, full cost takes it in, neither counts minutes as money") {
    CHECK(kCost.cash() == Money::units(29));
    CHECK(kCost.full() == Money::units(36));
    CHECK(Cost{.materials = {}, .labour = {}, .energy = {}, .overhead = {}, .hands_on = Minutes::whole(5)}.full() ==
          Money{});
}

TEST_CASE("every part is added and taken away on its own") {
    Cost sum = kCost;
    sum += kCost;
    CHECK(sum.overhead == Money::units(26));
    CHECK(sum.hands_on == Minutes::whole(34));
    CHECK(sum - kCost == kCost);
    CHECK((kCost + -kCost).is_zero());
    CHECK_FALSE(Cost{.materials = {}, .labour = {}, .energy = {}, .overhead = {}, .hands_on = Minutes::millionths(1)}
                    .is_zero());
}

TEST_CASE("a share takes its part of every component, and shares add up to the whole") {
    std::mt19937_64 random{96};
    const auto some = [&] { return static_cast<std::int64_t>(random() % 1'000'000'000); };
    for (int round = 0; round < 500; ++round) {
        const Cost whole{Money::millionths(some()), Money::millionths(some()), Money::millionths(some()),
                         Money::millionths(-some()), Minutes::millionths(some())};
        Cost rest = whole;
        Cost given;
        std::int64_t left = 1 + some() % 5'000;
        while (left > 0) {
            const std::int64_t taken = 1 + some() % left;
            const Cost part = share_of(rest, taken, left);
            CHECK(part.energy.in_millionths() == share_of(rest.energy.in_millionths(), taken, left));
            CHECK(part.hands_on.in_millionths() == share_of(rest.hands_on.in_millionths(), taken, left));
            given += part;
            rest -= part;
            left -= taken;
        }
        CHECK(rest.is_zero());
        CHECK(given == whole);
    }
}
