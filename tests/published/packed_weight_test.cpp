// How far a single pack may fall short of its label.
//   Council Directive 76/211/EEC, Annex I, 2.4, and the whole table with the United Kingdom's last row, "Packaged
//   goods: weights and measures regulations", gov.uk: percentages are rounded up to the next 0.1 g.
#include <doctest/doctest.h>

#include "domain/decisions/packed_weight.h"

using namespace dyestead;

namespace {

constexpr Quantity tenths(std::int64_t tenths_of_a_gram) {
    return Quantity::milligrams(tenths_of_a_gram * 100);
}

std::optional<Quantity> of_grams(std::int64_t grams) {
    return tolerated_shortfall(Quantity::grams(grams));
}

}  // namespace

TEST_CASE("the table: 9 %, 4.5 g, 4.5 %, 9 g, 3 %, 15 g, 1.5 %, 150 g, 1 %") {
    CHECK(of_grams(5) == tenths(5));  // 9 % of 5 g is 0.45 g
    CHECK(of_grams(40) == tenths(36));
    CHECK(of_grams(75) == tenths(45));
    CHECK(of_grams(160) == tenths(72));
    CHECK(of_grams(250) == tenths(90));
    CHECK(of_grams(400) == tenths(120));
    CHECK(of_grams(750) == tenths(150));
    CHECK(of_grams(2'000) == tenths(300));
    CHECK(of_grams(12'000) == tenths(1'500));
    CHECK(of_grams(20'000) == tenths(2'000));
}

TEST_CASE("bars of soap: 25 g 2.3, 85 and 100 g 4.5, 110 g 5.0, 125 g 5.7, 150 g 6.8, 333 g 10.0, 1,500 g 22.5") {
    CHECK(of_grams(25) == tenths(23));
    CHECK(of_grams(85) == tenths(45));
    CHECK(of_grams(100) == tenths(45));
    CHECK(of_grams(110) == tenths(50));
    CHECK(of_grams(125) == tenths(57));
    CHECK(of_grams(150) == tenths(68));
    CHECK(of_grams(333) == tenths(100));
    CHECK(of_grams(1'500) == tenths(225));
}

TEST_CASE("at every edge both rows say the same, and more is never tolerated less") {
    for (const std::int64_t edge : {50, 100, 200, 300, 500, 1'000, 10'000, 15'000}) {
        const auto at = of_grams(edge);
        const auto after = tolerated_shortfall(Quantity::milligrams(edge * 1'000 + 1));
        CHECK(after->in_base() - at->in_base() >= 0);
        CHECK(after->in_base() - at->in_base() <= 100);
    }
    Quantity before = *of_grams(5);
    for (std::int64_t grams = 6; grams < 16'000; ++grams) {
        CHECK(*of_grams(grams) >= before);
        before = *of_grams(grams);
    }
}

TEST_CASE("nothing is said of less than 5 g, nor of what is counted") {
    CHECK_FALSE(tolerated_shortfall(Quantity::milligrams(4'999)));
    CHECK_FALSE(tolerated_shortfall(Quantity::pieces(100)));
    CHECK(tolerated_shortfall(Quantity::microlitres(100'000)) == Quantity::microlitres(4'500));
}
