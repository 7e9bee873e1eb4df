#include "domain/values/ratio.h"

#include <doctest/doctest.h>

#include <type_traits>

#include "tests/support/operators.h"

using namespace dyestead;
using namespace dyestead::test;

static_assert(std::is_trivially_copyable_v<Ratio>);
static_assert(!std::is_convertible_v<int, Ratio>);
static_assert(!std::is_convertible_v<double, Ratio>);
static_assert(!Adds<Ratio, Ratio>);
static_assert(!Multiplies<Ratio, Ratio>);
static_assert(!Multiplies<Ratio, int>);
static_assert(Ratio{}.is_zero() && Ratio{0, 100}.is_zero());

TEST_CASE("ratios are equal and ordered as the numbers they stand for") {
    CHECK(Ratio{1, 2} == Ratio{50, 100});
    CHECK(Ratio{1, 3} != Ratio{333'333'333, 1'000'000'000});
    CHECK(Ratio{1, 3} > Ratio{333'333'333, 1'000'000'000});
    CHECK(Ratio{-1, 2} < Ratio{0, 7});
    CHECK(Ratio{0, 1} == Ratio{0, 9});
    CHECK(Ratio{918, 1'000} < Ratio{1, 1});
    // Both products leave 64 bits.
    CHECK(Ratio{100'000'000'000, 99'999'999'999} > Ratio{99'999'999'999, 100'000'000'000});
}

TEST_CASE("a number times a ratio is rounded half away from zero") {
    CHECK(times(10, {1, 4}) == 3);
    CHECK(times(-10, {1, 4}) == -3);
    CHECK(times(9, {1, 4}) == 2);
    CHECK(times(1'000, {5, 100}) == 50);
    CHECK(times(0, {5, 100}) == 0);
    CHECK_THROWS_AS(times(INT64_MAX, {2, 1}), Overflow);
}
