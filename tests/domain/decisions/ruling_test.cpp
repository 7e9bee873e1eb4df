#include <doctest/doctest.h>

#include "domain/decisions/ruling.h"

using namespace dyestead;

namespace {

// A usual year, a bad and a good one: home less bought-in with today's premium, and the premium.
RulingInput years(double bad, double usual, double good, double premium) {
    RulingInput input;
    input.hurdle = 12;
    input.home_less_plain = 1;
    input.bought_less_plain = 1;
    input.bad = {bad, bad - premium};
    input.usual = {usual, usual - premium};
    input.good = {good, good - premium};
    return input;
}

RulingWord word(const RulingInput& input) {
    return rule(input).word;
}

}  // namespace

TEST_CASE("the ruling of each kind of year") {
    CHECK(word(years(0.5, 1, 2, 0.5)) == RulingWord::grow);         // even without its premium, even in the bad year
    CHECK(word(years(0.4, 1, 2, 0.5)) == RulingWord::too_close);    // the bad year would need the premium
    CHECK(word(years(-1, 0.2, 2, 0.5)) == RulingWord::story_only);  // only with its premium
    CHECK(word(years(-1, 0, 2, 0.5)) == RulingWord::story_only);    // even is enough
    CHECK(word(years(-3, -1, -0.1, 0.5)) == RulingWord::buy_in);    // not even in the good year
    CHECK(word(years(-3, -1, 0.1, 0.5)) == RulingWord::too_close);  // the good year would pay
    CHECK(word(years(0, 0, 0, 0)) == RulingWord::grow);
}

TEST_CASE("plain soap beats both colours") {
    RulingInput input = years(0.5, 1, 2, 0.5);
    input.home_less_plain = -0.1;
    input.bought_less_plain = -0.2;
    CHECK(word(input) == RulingWord::leave_plain);
    input.bought_less_plain = 0;
    CHECK(word(input) == RulingWord::grow);
    input.bought_less_plain = -0.2;
    input.home_less_plain.reset();
    CHECK(word(input) == RulingWord::grow);
}

TEST_CASE("without an hour's worth there is no advice, and what is missing comes before all else") {
    RulingInput input = years(0.5, 1, 2, 0.5);
    input.hurdle.reset();
    CHECK(word(input) == RulingWord::no_target);
    input.missing = MissingRecord::shade_test;
    CHECK(word(input) == RulingWord::too_soon);
    CHECK(rule(input).missing == MissingRecord::shade_test);
}
