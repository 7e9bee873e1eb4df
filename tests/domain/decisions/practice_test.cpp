#include "domain/decisions/practice.h"

#include <doctest/doctest.h>

using namespace dyestead;
using doctest::Approx;

namespace {

std::vector<double> on_curve(double rate, int vats) {
    std::vector<double> times;
    for (int i = 1; i <= vats; ++i) times.push_back(on_learning_curve(1.5, rate, i));
    return times;
}

}  // namespace

TEST_CASE("times that lie on a curve give its rate, and the vats to come the time on it") {
    const auto found = practice(on_curve(0.85, 8), 2);
    REQUIRE(found);
    CHECK(found->vats == 8);
    CHECK(found->rate == Approx(0.85));
    CHECK(found->to_come == 2);
    CHECK(found->factor == Approx((on_learning_curve(1.5, 0.85, 9) + on_learning_curve(1.5, 0.85, 10)) / 2));
}

TEST_CASE("a vat without time on record keeps its number and says nothing") {
    auto times = on_curve(0.85, 9);
    times[3] = 0;
    const auto found = practice(times, 1);
    REQUIRE(found);
    CHECK(found->vats == 8);
    CHECK(found->rate == Approx(0.85));
}

TEST_CASE("nothing is said of few vats, of vats that get slower, or where chance may have done it") {
    CHECK(practice(on_curve(0.85, 6), 3));
    CHECK_FALSE(practice(on_curve(0.85, 5), 3));
    CHECK_FALSE(practice({}, 3));
    CHECK_FALSE(practice(on_curve(1.1, 8), 3));
    CHECK_FALSE(practice({1, 1, 1, 1, 1, 1, 1}, 3));
    CHECK_FALSE(practice({1.1, 0.8, 1.3, 0.9, 1.2, 0.8, 1.1, 0.9}, 3));
    CHECK_FALSE(practice(on_curve(0.85, 8), 0));
    // They get quicker, but the next would still be no quicker than what is reckoned with.
    CHECK_FALSE(practice({4, 3.2, 2.9, 2.6, 2.5, 2.4}, 1));
}
