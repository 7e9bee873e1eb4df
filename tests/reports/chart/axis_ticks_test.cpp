#include "reports/chart/axis_ticks.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace dyestead::reports;

namespace {

std::string labels(double low, double high, int wanted) {
    const AxisTicks ticks = axis_ticks(low, high, wanted);
    std::string out;
    for (const double at : ticks.at) out += (out.empty() ? "" : " ") + axis_tick_label(ticks, at);
    return out;
}

}  // namespace

TEST_CASE("an axis carries round numbers that cover its values") {
    CHECK(labels(0, 5.5, 6) == "0 1 2 3 4 5 6");
    CHECK(labels(0, 4.1, 5) == "0 1 2 3 4 5");
    CHECK(labels(0, 0.83, 5) == "0.0 0.2 0.4 0.6 0.8 1.0");
    CHECK(labels(0, 0.0042, 5) == "0.000 0.001 0.002 0.003 0.004 0.005");
    CHECK(labels(0, 230, 5) == "0 50 100 150 200 250");
    CHECK(labels(-1.2, 3, 5) == "-2 -1 0 1 2 3");
    CHECK(labels(0, 0.3, 3) == "0.0 0.1 0.2 0.3");
}

TEST_CASE("an axis with nothing on it, or no number, runs from 0 to 1") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinite = std::numeric_limits<double>::infinity();
    const double huge = std::numeric_limits<double>::max();
    CHECK(labels(0, 0, 2) == "0.0 0.5 1.0");
    CHECK(labels(nan, 3, 2) == "0.0 0.5 1.0");
    CHECK(labels(0, infinite, 2) == "0.0 0.5 1.0");
    CHECK(labels(5, 1, 2) == "0.0 0.5 1.0");
    CHECK(labels(-huge, huge, 2) == "0.0 0.5 1.0");
}

TEST_CASE("an axis covers any span with a few ticks, and a tick at zero is exactly zero") {
    for (int power = -9; power <= 12; ++power) {
        for (const double lead : {1.0, 1.3, 2.0, 3.7, 5.0, 9.99}) {
            const double high = lead * std::pow(10.0, power);
            for (const double low : {0.0, -high / 3}) {
                CAPTURE(high);
                CAPTURE(low);
                const AxisTicks ticks = axis_ticks(low, high, 5);
                CHECK(ticks.low() <= low);
                CHECK(ticks.high() >= high * (1 - 1e-9));
                CHECK(ticks.at.size() >= 3);
                CHECK(ticks.at.size() <= 8);
                CHECK(std::count(ticks.at.begin(), ticks.at.end(), 0.0) == 1);
            }
        }
    }
}
