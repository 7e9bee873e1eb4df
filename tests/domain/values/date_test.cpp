#include "domain/values/date.h"

#include <doctest/doctest.h>

#include "domain/values/key.h"
#include "tests/support/operators.h"

using namespace dyestead;
using namespace dyestead::test;

static_assert(std::is_trivially_copyable_v<Day>);
static_assert(!std::is_convertible_v<int, Day>);
static_assert(std::is_same_v<decltype(Day{} - Day{}), Days>);
static_assert(Adds<Day, Days>);
static_assert(!Adds<Day, Day>);
static_assert(!Adds<Day, int>);

struct Jar;
struct Shelf;
static_assert(std::is_trivially_copyable_v<Key<Jar>>);
static_assert(!std::is_convertible_v<std::int64_t, Key<Jar>> && !std::is_convertible_v<Key<Jar>, Key<Shelf>>);
static_assert(Key<Jar>{1} < Key<Jar>{2});

static_assert(day_of(1970, 1, 1) == Day{});
static_assert(day_of(2026, 3, 1) - day_of(2026, 2, 28) == Days{1});
static_assert(year_of(day_of(2025, 12, 31)) == 2025);

TEST_CASE("a leap year has a day more, but not every hundredth is one") {
    CHECK(days_in_year(2024) == 366);
    CHECK(days_in_year(2025) == 365);
    CHECK(days_in_year(1900) == 365);
    CHECK(days_in_year(2000) == 366);
    CHECK(day_of(2024, 3, 1) - day_of(2024, 2, 28) == Days{2});
}

TEST_CASE("the first of January is day 0 of its year, the last of December one less than its length") {
    for (int year = 1999; year < 2040; ++year) {
        CHECK(day_in_year(day_of(year, 1, 1)) == 0);
        CHECK(day_in_year(day_of(year, 12, 31)) == days_in_year(year) - 1);
        CHECK(year_of(day_of(year, 1, 1) - Days{1}) == year - 1);
    }
}

TEST_CASE("a day that the earlier month does not have becomes its last") {
    CHECK(months_before(day_of(2026, 3, 31), 1) == day_of(2026, 2, 28));
    CHECK(months_before(day_of(2024, 3, 31), 1) == day_of(2024, 2, 29));
    CHECK(months_before(day_of(2026, 5, 31), 1) == day_of(2026, 4, 30));
    CHECK(months_before(day_of(2024, 2, 29), 12) == day_of(2023, 2, 28));
    CHECK(months_before(day_of(2024, 2, 29), 48) == day_of(2020, 2, 29));
}

TEST_CASE("months reach back over the turn of the year, and none is the day itself") {
    CHECK(months_before(day_of(2026, 1, 15), 1) == day_of(2025, 12, 15));
    CHECK(months_before(day_of(2026, 1, 15), 13) == day_of(2024, 12, 15));
    CHECK(months_before(day_of(2026, 1, 15), 0) == day_of(2026, 1, 15));
    for (Day day = day_of(2023, 12, 1); day < day_of(2025, 3, 5); day += Days{1}) CHECK(months_before(day, 1) < day);
}
