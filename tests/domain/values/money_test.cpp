#include "domain/values/money.h"

#include <doctest/doctest.h>

#include "domain/values/minutes.h"
#include "domain/values/rate.h"
#include "tests/support/operators.h"

using namespace dyestead;
using namespace dyestead::test;

static_assert(std::is_trivially_copyable_v<Money>);
static_assert(std::is_standard_layout_v<Money>);
static_assert(sizeof(Money) == sizeof(std::int64_t));
static_assert(!std::is_convertible_v<int, Money>);
static_assert(!std::is_convertible_v<std::int64_t, Money>);
static_assert(!std::is_convertible_v<Money, std::int64_t>);
static_assert(!std::is_constructible_v<Money, double>);
static_assert(!std::is_constructible_v<Money, std::int64_t>);
static_assert(Adds<Money, Money>);
static_assert(!Adds<Money, int>);
static_assert(!Adds<Money, Minutes>);
static_assert(!Adds<Money, Quantity>);
static_assert(!Multiplies<Money, Money>);
static_assert(!Multiplies<Money, int>);
static_assert(!Multiplies<Money, double>);
static_assert(!Multiplies<Money, Quantity>);
static_assert(!Divides<Money, Money>);
static_assert(!Divides<Money, int>);
static_assert(!Compares<Money, int>);
static_assert(!Compares<Money, Minutes>);

static_assert(Money{}.is_zero());
static_assert(Money::units(3) == Money::millionths(3'000'000));
static_assert(Money::hundredths(-250) == Money::millionths(-2'500'000));
static_assert(Money::units(2) - Money::hundredths(50) == Money::hundredths(150));
static_assert(-Money::units(2) < Money{});

TEST_CASE("money of either sign adds up exactly") {
    Money total;
    for (int i = 0; i < 3; ++i) total += Money::millionths(333'333);
    CHECK(total + Money::millionths(1) == Money::units(1));
    total -= Money::units(2);
    CHECK(total == Money::millionths(-1'000'001));
    CHECK(-total == Money::millionths(1'000'001));
}

TEST_CASE("a total outside 64 bits is refused, never wrapped round") {
    const Money most = Money::millionths(INT64_MAX);
    const Money least = Money::millionths(INT64_MIN);
    CHECK_THROWS_AS(most + Money::millionths(1), Overflow);
    CHECK_THROWS_AS(least - Money::millionths(1), Overflow);
    CHECK_THROWS_AS(-least, Overflow);
    CHECK_THROWS_AS(Money::units(INT64_MAX), Overflow);
    CHECK_THROWS_AS(Money::hundredths(INT64_MIN), Overflow);
    CHECK(most + least == Money::millionths(-1));
}

TEST_CASE("a refused sum leaves the total as it was") {
    Money total = Money::millionths(INT64_MAX);
    CHECK_THROWS_AS(total += Money::millionths(1), Overflow);
    CHECK(total == Money::millionths(INT64_MAX));
}

TEST_CASE("nine of the largest stated amounts add up, a tenth is refused") {
    Money total;
    for (int i = 0; i < 9; ++i) total += kLargestStatedMoney;
    CHECK(total == Money::units(9'000'000'000'000));
    CHECK_THROWS_AS(total += kLargestStatedMoney, Overflow);
}
