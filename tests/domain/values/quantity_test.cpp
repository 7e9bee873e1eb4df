#include "domain/values/quantity.h"

#include <doctest/doctest.h>

#include <array>

#include "domain/values/rate.h"
#include "tests/support/operators.h"

using namespace dyestead;
using namespace dyestead::test;

static_assert(std::is_trivially_copyable_v<Quantity>);
static_assert(std::is_trivially_copyable_v<Rate>);
static_assert(!std::is_convertible_v<int, Quantity>);
static_assert(!std::is_constructible_v<Quantity, std::int64_t>);
static_assert(!std::is_convertible_v<Quantity, std::int64_t>);
static_assert(Adds<Quantity, Quantity>);
static_assert(!Adds<Quantity, int>);
static_assert(!Adds<Quantity, Money>);
static_assert(!Multiplies<Quantity, Quantity>);
static_assert(!Multiplies<Quantity, int>);
static_assert(Multiplies<Rate, Quantity>);
static_assert(!Multiplies<Rate, Money>);
static_assert(!Multiplies<Rate, Rate>);
static_assert(!Adds<Rate, Rate>);

static_assert(Quantity::grams(2) == Quantity::milligrams(2'000));
static_assert(Quantity::pieces(2).in_base() == 2'000);
static_assert(Quantity::grams(1) != Quantity::microlitres(1'000));
static_assert(Quantity::grams(1) < Quantity::grams(2));

namespace {
constexpr std::array kKinds{Kind::mass, Kind::volume, Kind::count, Kind::area, Kind::energy};
}

TEST_CASE("amounts add up within a kind, and every mixture of kinds is refused") {
    for (const Kind a : kKinds)
        for (const Kind b : kKinds) {
            const Quantity one{a, 3};
            const Quantity other{b, 4};
            if (a == b) {
                CHECK((one + other) == Quantity{a, 7});
                CHECK((one - other) == Quantity{a, -1});
                CHECK(one < other);
            } else {
                CHECK_THROWS_AS(one + other, KindsMixed);
                CHECK_THROWS_AS(one - other, KindsMixed);
                CHECK_THROWS_AS(static_cast<void>(one < other), KindsMixed);
                CHECK_FALSE(one == other);
                CHECK_THROWS_AS((Rate{Money::units(1), one} * other), KindsMixed);
            }
        }
}

TEST_CASE("an amount outside 64 bits is refused") {
    const Quantity least = Quantity::milligrams(INT64_MIN);
    CHECK_THROWS_AS(Quantity::grams(INT64_MAX), Overflow);
    CHECK_THROWS_AS(Quantity::pieces(INT64_MIN), Overflow);
    CHECK_THROWS_AS(Quantity::milligrams(INT64_MAX) + Quantity::milligrams(1), Overflow);
    CHECK_THROWS_AS(Quantity::milligrams(0) - least, Overflow);
}

TEST_CASE("a rate is kept as it was quoted and gives its own price back") {
    const Rate quoted{Money::hundredths(3'840), Quantity::microlitres(5'000'000)};
    CHECK(quoted * Quantity::microlitres(5'000'000) == Money::hundredths(3'840));
    CHECK(quoted * Quantity::microlitres(1'000'000) == Money::hundredths(768));
    // 10 for 3 pieces: a price per piece would lose the third of a millionth.
    const Rate three{Money::units(10), Quantity::pieces(3)};
    CHECK(three * Quantity::pieces(1) == Money::millionths(3'333'333));
    CHECK(three * Quantity::pieces(2) == Money::millionths(6'666'667));
    CHECK(three * Quantity::pieces(3) == Money::units(10));
}

TEST_CASE("rate times amount rounds half away from zero, on either side") {
    const Rate rate{Money::millionths(1), Quantity::milligrams(2)};
    CHECK(rate * Quantity::milligrams(1) == Money::millionths(1));
    CHECK(rate * Quantity::milligrams(-1) == Money::millionths(-1));
    CHECK(rate * Quantity::milligrams(3) == Money::millionths(2));
    CHECK(Rate{Money::millionths(-1), Quantity::milligrams(2)} * Quantity::milligrams(1) == Money::millionths(-1));
}

TEST_CASE("the dearest and largest that a fact may state still has a price") {
    const Rate dearest{kLargestStatedMoney, Quantity{Kind::mass, kLargestStatedBase}};
    CHECK(dearest * Quantity{Kind::mass, kLargestStatedBase} == kLargestStatedMoney);
    const Rate absurd{kLargestStatedMoney, Quantity::milligrams(1)};
    CHECK_THROWS_AS((absurd * Quantity{Kind::mass, kLargestStatedBase}), Overflow);
}
