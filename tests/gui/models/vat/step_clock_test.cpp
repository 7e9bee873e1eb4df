#include "gui/models/vat/step_clock.h"

#include <doctest/doctest.h>

#include "tests/support/shop_builder.h"

namespace dyestead::gui {

namespace {

using std::chrono::hours;
using std::chrono::minutes;

const Instant kNine = Instant{std::chrono::sys_days{std::chrono::year{2026} / 7 / 3}} + hours{9};

Minutes whole(int count) {
    return test::minutes(count).time;
}

}  // namespace

TEST_CASE("one key at the end of a step that does not stand: all of it was work") {
    const StepClock clock = begun(kNine);
    const StepTimes times = times_at(clock, kNine + minutes{25}, {.hands_on = whole(15), .waiting = std::nullopt});
    CHECK(times.hands_on.time == whole(25));
    CHECK(times.hands_on.mark == Mark::measured);
    CHECK(times.waiting.time == Minutes{});
    CHECK_FALSE(times.doubted);
}

TEST_CASE("one key at the end of a step that stands: the method's time was work, the rest stood") {
    const StepPlan plan{.hands_on = whole(15), .waiting = whole(480)};
    const StepTimes times = times_at(begun(kNine), kNine + hours{9}, plan);
    CHECK(times.hands_on.time == whole(15));
    CHECK(times.hands_on.mark == Mark::from_method);
    CHECK(times.waiting.time == whole(525));
}

TEST_CASE("a clock that is stopped tells work from standing, and a second stretch adds to the first") {
    StepClock clock = begun(kNine);
    stop_or_go_on(clock, kNine + minutes{20});
    const StepPlan plan{.hands_on = whole(15), .waiting = whole(480)};
    CHECK(stood_long_enough(clock, plan) == kNine + minutes{20} + hours{8});
    stop_or_go_on(clock, kNine + hours{2});
    stop_or_go_on(clock, kNine + hours{2} + minutes{5});
    const StepTimes times = times_at(clock, kNine + hours{3}, plan);
    CHECK(times.hands_on.time == whole(25));
    CHECK(times.hands_on.mark == Mark::measured);
    CHECK(times.waiting.time == whole(155));
}

TEST_CASE("a clock left running over night does not book the night as work") {
    const StepPlan plan{.hands_on = whole(15), .waiting = std::nullopt};
    const StepTimes times = times_at(begun(kNine), kNine + hours{14}, plan);
    REQUIRE(times.doubted);
    CHECK(*times.doubted == whole(14 * 60));
    CHECK(times.hands_on.time == whole(15));
    CHECK(times.waiting.time == whole(14 * 60 - 15));
    // Two hours are nothing out of the way, nor three times what the method says.
    CHECK_FALSE(times_at(begun(kNine), kNine + hours{2}, plan).doubted);
    CHECK_FALSE(times_at(begun(kNine), kNine + hours{6}, {.hands_on = whole(120), .waiting = {}}).doubted);
    CHECK(times_at(begun(kNine), kNine + hours{6} + minutes{1}, {.hands_on = whole(120), .waiting = {}}).doubted);
    // Stopped, then let run on and forgotten: what was measured before stays.
    StepClock clock = begun(kNine);
    stop_or_go_on(clock, kNine + minutes{10});
    stop_or_go_on(clock, kNine + minutes{30});
    CHECK(times_at(clock, kNine + hours{10}, plan).hands_on.time == whole(25));
}

TEST_CASE("a desktop's clock that is set back gives no time, never less than none") {
    StepClock clock = begun(kNine);
    CHECK(times_at(clock, kNine - hours{1}, {}).hands_on.time == Minutes{});
    stop_or_go_on(clock, kNine - hours{1});
    const StepTimes times = times_at(clock, kNine - hours{2}, {});
    CHECK(times.hands_on.time == Minutes{});
    CHECK(times.waiting.time == Minutes{});
}

TEST_CASE("a step of which the method says nothing never calls") {
    CHECK_FALSE(stood_long_enough(begun(kNine), {}));
    CHECK(stood_long_enough(begun(kNine), {.hands_on = whole(10), .waiting = whole(60)}) == kNine + minutes{70});
}

}  // namespace dyestead::gui
