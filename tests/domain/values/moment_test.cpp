#include "domain/values/moment.h"

#include <doctest/doctest.h>

using namespace dyestead;

TEST_CASE("a moment is later by the clock everywhere, not by the one on the wall") {
    const Day day = day_of(2026, 10, 25);
    // The night the clocks go back: 1:30 comes twice.
    const Moment before{day, 90, 60};
    const Moment after{day, 90, 0};
    CHECK(universal(before) < universal(after));
    CHECK(between(before, after) == Minutes::whole(60));
    CHECK(between(after, before) == Minutes::whole(-60));
    CHECK(between({day, 23 * 60, 60}, {day + Days{1}, 60, 0}) == Minutes::whole(180));
    CHECK(universal({day_of(1970, 1, 1), 0, 0}) == 0);
    CHECK(universal({day_of(1970, 1, 1), 0, 60}) == -60);
    CHECK_FALSE(before == after);
}
