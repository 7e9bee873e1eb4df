#include "domain/values/share.h"

#include <doctest/doctest.h>

#include <random>

using namespace dyestead;

static_assert(scaled(1, 1, 3) == 0 && scaled(2, 1, 3) == 1);
static_assert(share_of(100, 1, 3) == 33);

TEST_CASE("what is scaled is rounded half away from zero") {
    CHECK(scaled(5, 1, 2) == 3);
    CHECK(scaled(-5, 1, 2) == -3);
    CHECK(scaled(5, -1, 2) == -3);
    CHECK(scaled(5, 1, -2) == -3);
    CHECK(scaled(-5, 1, -2) == 3);
    CHECK(scaled(4, 1, 3) == 1);
    CHECK(scaled(-4, 1, 3) == -1);
    CHECK(scaled(1, 1, 3) == 0);
    CHECK(scaled(-1, 1, 3) == 0);
    CHECK(scaled(0, 7, 3) == 0);
}

TEST_CASE("products are taken wide, so that only the result must fit") {
    CHECK(scaled(INT64_MAX, INT64_MAX, INT64_MAX) == INT64_MAX);
    CHECK(scaled(INT64_MIN, 1'000'000, 1'000'000) == INT64_MIN);
    CHECK(share_of(INT64_MAX, INT64_MAX - 1, INT64_MAX) == INT64_MAX - 1);
}

TEST_CASE("a result that does not fit is refused") {
    CHECK_THROWS_AS(scaled(INT64_MAX, 2, 1), Overflow);
    CHECK_THROWS_AS(scaled(INT64_MIN, 1, -1), Overflow);
    CHECK_THROWS_AS(narrow(static_cast<Wide>(INT64_MAX) + 1), Overflow);
    CHECK_THROWS_AS(narrow(static_cast<Wide>(INT64_MIN) - 1), Overflow);
    CHECK_THROWS_AS(checked_add(INT64_MAX, 1), Overflow);
    CHECK_THROWS_AS(checked_add(INT64_MIN, -1), Overflow);
    CHECK(checked_add(INT64_MAX, INT64_MIN) == -1);
}

TEST_CASE("the parts of any sequence of draws add up to the whole, and the last draw takes the rest") {
    std::mt19937_64 random{20260703};
    for (int round = 0; round < 2'000; ++round) {
        const std::int64_t whole = static_cast<std::int64_t>(random() % 2'000'001) - 1'000'000;
        std::int64_t left = 1 + static_cast<std::int64_t>(random() % 1'000);
        std::int64_t rest = whole;
        std::int64_t given = 0;
        while (left > 0) {
            const std::int64_t taken = static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(left + 1));
            const std::int64_t part = share_of(rest, taken, left);
            if (taken == 0) CHECK(part == 0);
            if (taken == left) CHECK(part == rest);
            // A part never has the other sign and never more than there is.
            CHECK(((whole >= 0 && part >= 0 && part <= rest) || (whole <= 0 && part <= 0 && part >= rest)));
            given += part;
            rest -= part;
            left -= taken;
        }
        CHECK(rest == 0);
        CHECK(given == whole);
    }
}

TEST_CASE("cutting a draw in two moves no part by more than one unit") {
    std::mt19937_64 random{4180};
    for (int round = 0; round < 5'000; ++round) {
        const auto rest = static_cast<std::int64_t>(random() % 1'000'000'000'000);
        const auto left = 2 + static_cast<std::int64_t>(random() % 10'000);
        const auto first = 1 + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(left - 1));
        const auto second = 1 + static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(left - first));
        const std::int64_t at_once = share_of(rest, first + second, left);
        const std::int64_t one = share_of(rest, first, left);
        const std::int64_t two = share_of(rest - one, second, left - first);
        const std::int64_t difference = at_once - (one + two);
        CHECK(difference >= -1);
        CHECK(difference <= 1);
    }
}
