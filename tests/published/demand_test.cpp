// How many to take: the newsvendor's question.
//   G. Cachon and C. Terwiesch, Matching Supply with Demand, as quoted in teaching material: EcoTable Tea (Poisson 4.5;
//   price 55, cost 32, salvage 20) and the Pony Express sales (a table of chances; 12, 6, 2.50).
#include <doctest/doctest.h>

#include <cmath>
#include <numeric>

#include "domain/decisions/demand.h"

using namespace dyestead;
using doctest::Approx;

TEST_CASE("EcoTable Tea: order five; 3.41192 sold of four, 1.82312 left of six, 59.13468 earned on eight") {
    const Demand demand = poisson(4.5);
    CHECK(1 - demand.at_most(3) == Approx(0.65770).epsilon(1e-5));
    CHECK(demand.at_most(7) == Approx(0.91341).epsilon(1e-5));
    CHECK(best_to_take(demand, 55 - 32, 32 - 20, 100) == 5);
    CHECK(demand.sold(4) == Approx(3.41192).epsilon(1e-5));
    CHECK(demand.left(6) == Approx(1.82312).epsilon(1e-5));
    CHECK(demand.enough_for(0.9) == 7);
    CHECK((55 - 32) * demand.sold(8) - (32 - 20) * demand.left(8) == Approx(59.13468).epsilon(1e-6));
}

TEST_CASE("Pony Express: 30,000, and 40,000 to have enough nine times in ten") {
    const Demand demand{{0, .0181, .0733, .1467, .1954, .1954, .1563, .1042, .0595, .0298, .0132, .0053, .0019, .0006,
                         .0002, .0001}};  // of 0, 5,000, 10,000 ... 75,000
    CHECK(std::accumulate(demand.chance.begin(), demand.chance.end(), 0.0) == Approx(1));
    CHECK(demand.at_most(6) == Approx(0.7852));
    CHECK(best_to_take(demand, 6, 3.5, 15) == 6);
    CHECK(demand.enough_for(0.9) == 8);
    CHECK(demand.left(10) * 5'000 == Approx(25'061).epsilon(1e-3));
    CHECK((6 * demand.sold(15) - 3.5 * demand.left(15)) * 5'000 == Approx(-25'000).epsilon(0.01));
}

// A gamma rate with Poisson counts is a negative binomial: a closed form wherever nothing was sold out.
TEST_CASE("the forecast is the negative binomial where every day was seen to its end") {
    const RatePrior prior{3, 6};
    const std::vector<DemandRecord> records{{5, 4, false}, {6, 2, false}};
    const double shape = 3 + 6;
    const double rate = 6 + 11;
    const Demand demand = forecast(prior, records, 4);
    const double p = rate / (rate + 4);
    for (int n = 0; n < 12; ++n) {
        const double exact = std::exp(std::lgamma(shape + n) - std::lgamma(shape) - std::lgamma(n + 1.0) +
                                      shape * std::log(p) + n * std::log(1 - p));
        CHECK(demand.chance[static_cast<std::size_t>(n)] == Approx(exact).epsilon(1e-6));
    }
    CHECK(demand.expected() == Approx(shape / rate * 4).epsilon(1e-6));
}

TEST_CASE("a day that sold out says at least so many, and so more than the same number with some left") {
    const RatePrior prior{1, 2};
    const Demand some_left = forecast(prior, {{6, 5, false}}, 6);
    const Demand sold_out = forecast(prior, {{6, 5, true}}, 6);
    CHECK(sold_out.expected() > some_left.expected() + 1);
    CHECK(std::accumulate(sold_out.chance.begin(), sold_out.chance.end(), 0.0) == Approx(1));
}

TEST_CASE("what was never seen, or never will be open") {
    CHECK(forecast({1, 1}, {}, 0).expected() == 0);
    const Demand first = forecast(prior_from({}), {}, 6);
    CHECK(std::isfinite(first.expected()));
    CHECK(prior_from({{{5, 0, false}}}).shape > 0);
    CHECK(best_to_take(poisson(4.5), 0, 1, 100) == 0);
    CHECK(best_to_take(poisson(4.5), 1, 0, 7) == 7);
}
