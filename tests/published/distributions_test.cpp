// The distributions the decisions stand on, against another library: the figures beside each check were computed with
// python3-scipy 1.10.1 (scipy.stats, SciPy 1.0: Fundamental Algorithms, Nature Methods 17, 2020), the call named with
// them.
#include <doctest/doctest.h>

#include <array>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>

#include "domain/decisions/demand.h"
#include "domain/decisions/order_quantity.h"
#include "domain/decisions/season_draws.h"
#include "tests/support/invented_season.h"

using namespace dyestead;
using doctest::Approx;

TEST_CASE("Poisson: poisson.cdf and poisson.ppf at 2.5 and at 12") {
    const Demand few = poisson(2.5);
    CHECK(few.at_most(0) == Approx(0.082084998624).epsilon(1e-9));
    CHECK(few.at_most(2) == Approx(0.543813115883).epsilon(1e-9));
    CHECK(few.at_most(5) == Approx(0.957978961805).epsilon(1e-9));
    const Demand many = poisson(12);
    CHECK(many.at_most(8) == Approx(0.155027781767).epsilon(1e-9));
    CHECK(many.at_most(12) == Approx(0.575965248573).epsilon(1e-9));
    CHECK(many.at_most(18) == Approx(0.962583510337).epsilon(1e-9));
    const std::array levels{0.5, 0.9, 0.95, 0.99};
    const std::array at_2_5{2, 5, 5, 7};
    const std::array at_12{12, 17, 18, 21};
    for (std::size_t i = 0; i < levels.size(); ++i) {
        CHECK(few.enough_for(levels[i]) == at_2_5[i]);
        CHECK(many.enough_for(levels[i]) == at_12[i]);
        CHECK(batches_to_hold(2.5, levels[i]) == at_2_5[i]);
        CHECK(batches_to_hold(12, levels[i]) == at_12[i]);
    }
}

TEST_CASE("negative binomial: nbinom.pmf, mean and ppf at n = 9, p = 17/21 are the forecast of a gamma rate") {
    const Demand demand = forecast({3, 6}, {{5, 4, false}, {6, 2, false}}, 4);
    const std::array<std::pair<std::size_t, double>, 5> chances{
        {{0, 0.149302348721}, {1, 0.255946883522}, {2, 0.243758936688}, {5, 0.048177989171}, {8, 0.003329436677}}};
    for (const auto& [bars, chance] : chances) CHECK(demand.chance[bars] == Approx(chance).epsilon(1e-6));
    CHECK(demand.expected() == Approx(2.117647058824).epsilon(1e-6));
    CHECK(demand.enough_for(0.5) == 2);
    CHECK(demand.enough_for(0.9) == 4);
    CHECK(demand.enough_for(0.99) == 7);
}

TEST_CASE("Student's t with 4 degrees: t.ppf, which the library used for the drawn seasons must give as well") {
    const boost::math::students_t t{4};
    CHECK(boost::math::quantile(t, 0.1) == Approx(-1.533206273713).epsilon(1e-9));
    CHECK(boost::math::quantile(t, 0.75) == Approx(0.740697084091).epsilon(1e-9));
    CHECK(boost::math::quantile(t, 0.9) == Approx(1.533206273713).epsilon(1e-9));
}

TEST_CASE("beta-binomial: betabinom.pmf(k, 4, 1.5, 5.5) is how often so many of four vats fail, one of six on record") {
    DoubtInput input = test::invented({{2025, 5, 8, 130, 0.6},
                                       {2025, 5, 12, 110, 0.4},
                                       {2025, 5, 10, 120, 0.5},
                                       {2026, 5, 9, 120, 0.5},
                                       {2026, 5, 14, 100, 0.45},
                                       {2026, 5, 0, 120, 0.5}});
    constexpr int kSeasons = 100'000;
    std::array<double, 5> seen{};
    for (const DrawnSeason& each : draw_seasons(input, vat_spread(input), 4, kSeasons))
        seen[static_cast<std::size_t>(each.season.failed_vats)] += 1.0 / kSeasons;
    const std::array expected{0.452194940476, 0.319196428571, 0.159598214286, 0.057291666667, 0.011718750000};
    for (std::size_t failed = 0; failed < seen.size(); ++failed) {
        // Four standard errors of a share of so many draws.
        const double error = 4 * std::sqrt(expected[failed] * (1 - expected[failed]) / kSeasons);
        CHECK(std::abs(seen[failed] - expected[failed]) < error);
    }
}

TEST_CASE("PERT: beta.var over the logs of 0.2, 0.6 and 0.9 is how far a strength that is only stated lies apart") {
    DoubtInput input = test::invented({{2025, 5, 8, 130, {}}, {2025, 5, 12, 110, {}}, {2026, 5, 9, 120, {}}});
    input.strength_stated = Band{0.2, 0.6, 0.9};
    double variance = 0;
    const VatSpread spread = vat_spread(input);
    for (const double each : spread.root[2]) variance += each * each;
    CHECK(variance == Approx(0.073168362237).epsilon(1e-9));
}
