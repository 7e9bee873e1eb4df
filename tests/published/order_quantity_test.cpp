// Order quantities, price breaks, reorder points.
#include <doctest/doctest.h>

#include <cmath>

#include "domain/decisions/order_quantity.h"

using namespace dyestead;
using doctest::Approx;

// "How Many Parts to Make at Once": X = sqrt(240 M S / C); 1,000 a month, set-up 2 dollars, 10 cents a piece, interest
// and depreciation of 10 % a year. The source cuts 2,190.89 to 2,190.
TEST_CASE("Harris 1913, Factory 10(2): lots of 2,190, and a set-up of a tenth of a cent each") {
    const auto lot = economic_order_quantity(12'000, 2, 0.1 * 0.1);
    REQUIRE(lot);
    CHECK(std::floor(*lot) == 2'190);
    CHECK(2 / *lot * 100 == Approx(0.1).epsilon(0.1));
}

// A question-and-answer page; beside Harris only. 800 a year, 60 an order, 30 % holding.
TEST_CASE("all-units discount: 200 at 48 for 40,080 a year, and the lowest price is not best") {
    const std::vector<PriceBracket> brackets{{1, 53}, {50, 51.5}, {100, 49.5}, {200, 48}, {500, 47}};
    const auto best = best_order(800, 60, 0.3, 0, brackets);
    REQUIRE(best);
    CHECK(best->quantity == Approx(200));
    CHECK(best->yearly_cost == Approx(40'080));
    CHECK(yearly_cost(800, 60, 0.3 * 49.5, 49.5, 100) == Approx(40'822.5));
    CHECK(yearly_cost(800, 60, 0.3 * 47, 47, 500) == Approx(41'221));
    // Where there is room for no more than 90, the second bracket's own optimum.
    const auto small = best_order(800, 60, 0.3, 0, brackets, 90);
    REQUIRE(small);
    CHECK(small->quantity == Approx(78.83).epsilon(1e-4));
    CHECK(small->yearly_cost == Approx(42'417.9).epsilon(1e-5));
}

// From memory: W. J. Stevenson, Operations Management; 816 cases, 12 an order, 4 a case and year.
TEST_CASE("from memory: 100 cases at 16 for 13,354 a year") {
    const auto best = best_order(816, 12, 0, 4, {{1, 20}, {50, 18}, {80, 17}, {100, 16}});
    REQUIRE(best);
    CHECK(best->quantity == Approx(100));
    CHECK(best->yearly_cost == Approx(13'354).epsilon(1e-4));
    CHECK(*economic_order_quantity(816, 12, 4) == Approx(70).epsilon(1e-2));
}

// B. W. Taylor, Introduction to Management Science, chapter 16: 30 a day, spread 5, 10 days, z 1.65; answers from
// memory.
TEST_CASE("Taylor, chapter 16: reorder at 326.1, of which 26.1 is safety stock") {
    CHECK(safety_stock({30, 5, 10, 0}, 1.65) == Approx(26.1).epsilon(1e-3));
    CHECK(reorder_level({30, 5, 10, 0}, 1.65) == Approx(326.1).epsilon(1e-3));
    CHECK(*economic_order_quantity(10'000, 150, 0.75) == Approx(2'000));
    CHECK(reorder_level({10'000.0 / 311, 0, 10, 0}, 0) == Approx(321.54).epsilon(1e-4));
}

// A question-and-answer page: 30 a day, spread 3, 7 days with a spread of 4, z 1.28.
TEST_CASE("demand and lead time both vary: 153.94") {
    CHECK(safety_stock({30, 3, 7, 4}, 1.28) == Approx(153.94).epsilon(1e-4));
}

// Poisson 4.5: the chance of at most 7 is 0.91341 (Cachon and Terwiesch, Matching Supply with Demand, quoted).
TEST_CASE("use in lumps: seven batches last with nine chances in ten where four and a half are expected") {
    CHECK(batches_to_hold(4.5, 0.90) == 7);
    CHECK(batches_to_hold(4.5, 0.914) == 8);
    CHECK(batches_to_hold(0, 0.99) == 0);
    CHECK(batches_to_hold(0.01, 0.95) == 0);
}

TEST_CASE("where nothing says how much, nothing is said") {
    CHECK_FALSE(economic_order_quantity(0, 2, 1));
    CHECK_FALSE(economic_order_quantity(10, 0, 1));
    CHECK_FALSE(economic_order_quantity(10, 2, 0));
    CHECK_FALSE(best_order(0, 2, 0.1, 0, {{1, 5}}));
    CHECK_FALSE(best_order(10, 2, 0.1, 0, {}));
    CHECK_FALSE(best_order(10, 2, 0.1, 0, {{100, 5}}, 50));
    // Holding that costs nothing: a year's worth.
    CHECK(best_order(10, 2, 0, 0, {{1, 5}})->quantity == Approx(10));
}
