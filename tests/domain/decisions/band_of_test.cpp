#include "domain/decisions/band_of.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <boost/math/constants/constants.hpp>
#include <cmath>
#include <cstddef>

using namespace dyestead;

namespace {

// The three places in the values put in order.
Band by_sorting(std::vector<double> values) {
    std::ranges::sort(values);
    const auto at = [&](double share) {
        return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
    };
    return {at(kBad), at(kUsual), at(kGood)};
}

void check(const std::vector<double>& values) {
    const Band found = band_of(values);
    const Band sorted = by_sorting(values);
    CAPTURE(values.size());
    CHECK(found.bad == sorted.bad);
    CHECK(found.usual == sorted.usual);
    CHECK(found.good == sorted.good);
}

// Values that stand in no order: parts of a whole turned round and round.
std::vector<double> scattered(std::size_t count, double sizes) {
    std::vector<double> values;
    for (std::size_t i = 0; i < count; ++i) {
        const double turned = static_cast<double>(i) * boost::math::constants::phi<double>();
        values.push_back(std::floor((turned - std::floor(turned)) * sizes) - sizes / 3);
    }
    return values;
}

}  // namespace

TEST_CASE("bad, usual and good are the very values that stand in those places") {
    for (const std::size_t count : {1U, 2U, 3U, 10U, 11U, 4'095U, 4'096U, 4'097U, 20'000U, 100'000U})
        for (const double sizes : {1.0, 2.0, 6.0, 1e3, 1e9}) check(scattered(count, sizes));
}

TEST_CASE("they are found where the sample says nothing of the rest") {
    // Every 25th value is sampled: these alone are large, and so all three lie outside of what the sample shows.
    std::vector<double> values = scattered(100'000, 1e6);
    for (std::size_t i = 0; i < values.size(); i += 25) values[i] += 1e9;
    check(values);
}
