#include "domain/values/minutes.h"

#include <doctest/doctest.h>

#include "domain/values/span.h"
#include "tests/support/operators.h"

using namespace dyestead;
using namespace dyestead::test;

static_assert(std::is_trivially_copyable_v<Minutes>);
static_assert(std::is_trivially_copyable_v<Span>);
static_assert(!std::is_convertible_v<int, Minutes>);
static_assert(!std::is_constructible_v<Minutes, double>);
static_assert(!std::is_constructible_v<Minutes, Money>);
static_assert(Adds<Minutes, Minutes>);
static_assert(!Adds<Minutes, Money>);
static_assert(!Adds<Minutes, int>);
static_assert(!Multiplies<Minutes, Minutes>);
static_assert(!Multiplies<Minutes, Money>);
static_assert(Multiplies<HourlyRate, Minutes>);
static_assert(!Multiplies<HourlyRate, Money>);
static_assert(!Multiplies<HourlyRate, HourlyRate>);

static_assert(Minutes::whole(90) == Minutes::millionths(90'000'000));

TEST_CASE("an hour's pay times minutes is money, rounded half away from zero") {
    const HourlyRate rate{Money::units(15)};
    CHECK(rate * Minutes::whole(60) == Money::units(15));
    CHECK(rate * Minutes::whole(20) == Money::units(5));
    CHECK(rate * Minutes::whole(0) == Money{});
    // A third of a minute at 1 an hour: 1/180 = 0.0055555...
    CHECK(HourlyRate{Money::units(1)} * Minutes::millionths(333'333) == Money::millionths(5'556));
    // Half a millionth goes up, and down below zero.
    CHECK(HourlyRate{Money::millionths(1)} * Minutes::whole(30) == Money::millionths(1));
    CHECK(HourlyRate{Money::millionths(-1)} * Minutes::whole(30) == Money::millionths(-1));
    CHECK(HourlyRate{Money::millionths(1)} * Minutes::millionths(29'999'999) == Money{});
}

TEST_CASE("minutes outside 64 bits are refused") {
    CHECK_THROWS_AS(Minutes::whole(INT64_MAX), Overflow);
    CHECK_THROWS_AS(Minutes::millionths(INT64_MAX) + Minutes::millionths(1), Overflow);
    CHECK_THROWS_AS(-Minutes::millionths(INT64_MIN), Overflow);
    CHECK_THROWS_AS(HourlyRate{kLargestStatedMoney} * (kLongestStatedTime + kLongestStatedTime), Overflow);
}
