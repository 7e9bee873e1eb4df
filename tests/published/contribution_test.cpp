// Contribution, break-even, target profit, the scarce hour, markup and margin.
//   OpenStax, Principles of Accounting, Volume 2: Managerial Accounting (Rice University), chapters 3, 9 and 10.
#include <doctest/doctest.h>

#include "domain/decisions/contribution.h"
#include "domain/decisions/pricing.h"

using namespace dyestead;
using doctest::Approx;

TEST_CASE("OpenStax 3.2, Hicks: 225 to break even, 425 for 16,000, 725 for 24,000 after tax at 40 %") {
    constexpr double kContribution = 100 - 20;
    CHECK(units_to_earn(18'000, kContribution) == Approx(225));
    CHECK(*units_to_earn(18'000, kContribution) * 100 == Approx(22'500));
    CHECK(175 * kContribution - 18'000 == Approx(-4'000));
    CHECK(300 * kContribution - 18'000 == Approx(6'000));
    CHECK(units_to_earn(18'000, kContribution, 16'000) == Approx(425));
    const auto wanted = before_tax(24'000, 0.4);
    REQUIRE(wanted);
    CHECK(*wanted == Approx(40'000));
    CHECK(units_to_earn(18'000, kContribution, *wanted) == Approx(725));
}

TEST_CASE("OpenStax 3.2, Channing, Marshall, the kiosk and the lofts") {
    CHECK(units_to_earn(16'800, 1'250 - 850) == Approx(42));
    CHECK(units_to_earn(14'000, 400 - 150) == Approx(56));
    CHECK(units_to_earn(14'000, 400 - 150, 10'000) == Approx(96));
    CHECK(*units_to_earn(700, 25 - 15.5) == Approx(73.684).epsilon(1e-4));
    CHECK(units_to_earn(100'000, 500 - 300) == Approx(500));
    CHECK(units_to_earn(100'000, 500 - 300, 50'000) == Approx(750));
}

TEST_CASE("OpenStax 3.5, West Brothers: 4,715.45 composites of five, three and two") {
    const double contribution = 5 * (6.25 - 3.25) + 3 * (7.75 - 4.5) + 2 * (9.25 - 6.25);
    CHECK(contribution == Approx(30.75));
    const auto composites = units_to_earn(145'000, contribution);
    REQUIRE(composites);
    CHECK(*composites == Approx(4'715.45).epsilon(1e-6));
    CHECK(*composites * 5 == Approx(23'577).epsilon(1e-4));
    CHECK(*composites * 3 == Approx(14'146).epsilon(1e-4));
    CHECK(*composites * 2 == Approx(9'431).epsilon(1e-4));
}

// The source ranks bookcases first by a contribution of 48; 175 - 35 - 50 - 45 is 45. Its plan stands all the same.
TEST_CASE("OpenStax 10, Wood World: 60,000 desks, 40,000 bookcases and 20,000 chairs in 80,000 hours") {
    const std::vector<ScarceUse> uses{{350 - 40 - 70 - 55, 1, 60'000},    // desks, 185 an hour
                                      {200 - 30 - 65 - 50, 0.5, 48'000},  // chairs, 110
                                      {175 - 35 - 50 - 45, 0.25, 40'000}};
    CHECK(uses[2].contribution / uses[2].takes == Approx(180));
    const auto made = best_use(uses, 80'000);
    CHECK(made[0] == Approx(60'000));
    CHECK(made[1] == Approx(20'000));
    CHECK(made[2] == Approx(40'000));
}

TEST_CASE("OpenStax 9 and the usual identities: markup and margin, each said of the other") {
    const PriceTerms none;
    CHECK(price_for_markup(none, 10, 0.3) == Approx(13));
    CHECK(price_for_markup(none, 12, 0.3) == Approx(15.6));
    CHECK(*price_for_margin(none, 100, 0.4) == Approx(166.67).epsilon(1e-4));
    CHECK(price_for_markup(none, 8, 0.25) == Approx(10));
    CHECK(margin_at(none, 10, 8) == Approx(0.2));
    for (const double margin : {0.0, 0.1, 0.4, 0.5, 0.9})
        CHECK(*price_for_margin(none, 7, margin) == Approx(*price_for_markup(none, 7, margin / (1 - margin))));
}

TEST_CASE("a price gives back what it was set for, with tax and fees, and there is none where they take it all") {
    const PriceTerms terms{0.2, 0.0169, 0.13};
    const double margin_price = *price_for_margin(terms, 3.1, 0.35);
    CHECK(margin_at(terms, margin_price, 3.1) == Approx(0.35));
    const double hour_price = *price_for_hour(terms, 1.9, 0.2, 14);
    CHECK((terms.kept(hour_price) - 1.9) / 0.2 == Approx(14));
    CHECK(terms.kept(*floor_price(terms, 1.9)) == Approx(1.9));
    CHECK_FALSE(price_for_margin(terms, 3.1, 1));
    CHECK_FALSE(price_for_margin(terms, 3.1, 0.99));
    CHECK_FALSE(floor_price({0, 1, 0}, 3.1));
    CHECK_FALSE(margin_at(terms, 0, 3.1));
    CHECK_FALSE(units_to_earn(100, 0));
    CHECK_FALSE(before_tax(100, 1));
    CHECK_FALSE(margin_of_safety(0, 3));
    CHECK(margin_of_safety(300, 225) == Approx(0.25));
}

TEST_CASE("prices go up to the next point, and one on a point stays") {
    CHECK(up_to_point(6.01, 0.5) == Approx(6.5));
    CHECK(up_to_point(6.5, 0.5) == Approx(6.5));
    CHECK(up_to_point(0.1 + 0.2, 0.1) == Approx(0.3));
    CHECK(up_to_point(6.01, 0) == Approx(6.01));
}
