#include "domain/decisions/forecast.h"

#include <doctest/doctest.h>

using namespace dyestead;
using doctest::Approx;

TEST_CASE("knowing all that matters saves what the losing seasons lose") {
    // Grow always: (-4 - 2 + 1 + 3)/4 < 0, so never; with the forecast only the last two.
    CHECK(perfect_forecast({1, 2, 3, 4}, {-4, -2, 1, 3}) == Approx(1));
    // Always brings 3/4 a season; leaving out the one that loses brings 5/4.
    CHECK(perfect_forecast({1, 2, 3, 4}, {-2, 1, 1, 3}) == Approx(0.5));
}

TEST_CASE("what never differs is worth nothing to know, however the seasons come out") {
    CHECK(perfect_forecast({1, 1, 1, 1}, {-4, -2, 1, 3}) == 0);
    std::vector<double> inputs(5'000, 0);
    std::vector<double> values;
    for (int i = 0; i < 5'000; ++i) values.push_back(i % 7 - 3.5);
    CHECK(perfect_forecast(inputs, values) == 0);
    CHECK(perfect_forecast({5}, {3}) == 0);
    CHECK(perfect_forecast({5}, {-3}) == 0);
}

TEST_CASE("seasons alike in the thing are decided on together") {
    // Of those with one failed vat the sum is -1, of those with none 2: only the latter are grown.
    CHECK(perfect_forecast({0, 1, 0, 1}, {3, 4, -1, -5}) == Approx((2.0 - 1.0) / 4));
    // The same for groups far larger than a fiftieth of all.
    std::vector<double> inputs;
    std::vector<double> values;
    for (int i = 0; i < 6'000; ++i) {
        inputs.push_back(i % 2);
        values.push_back((i % 2 == 0 ? 1 : -0.5) + (i % 4 < 2 ? 10 : -10));
    }
    CHECK(perfect_forecast(inputs, values) == Approx(0.25));
}
