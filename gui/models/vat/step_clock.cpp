#include "gui/models/vat/step_clock.h"

#include <algorithm>

namespace dyestead::gui {

namespace {

using std::chrono::seconds;

constexpr std::int64_t kSecondsAMinute = 60;
constexpr std::int64_t kMillionths = 1'000'000;
constexpr seconds kLongestUnasked{2 * 60 * kSecondsAMinute};
constexpr int kTimesTheMethod = 3;

// Whole minutes; the clock of the desktop may have been set back.
Minutes minutes(seconds time) {
    return Minutes::millionths(std::max<std::int64_t>(0, time.count() / kSecondsAMinute) * kMillionths);
}

seconds in_seconds(Minutes time) {
    return seconds{time.in_millionths() * kSecondsAMinute / kMillionths};
}

Span span(Minutes time, Mark mark) {
    return {.time = time, .unit = TimeUnit::min, .mark = mark};
}

seconds since(Instant then, Instant now) {
    return std::max(seconds{0}, now - then);
}

}  // namespace

StepClock begun(Instant now) {
    return {.began = now, .running = now, .stopped = std::nullopt, .worked = {}};
}

void stop_or_go_on(StepClock& clock, Instant now) {
    if (clock.running) {
        clock.worked += since(*clock.running, now);
        clock.running.reset();
        clock.stopped = now;
    } else {
        clock.running = now;
    }
}

StepTimes times_at(const StepClock& clock, Instant now, const StepPlan& plan) {
    const seconds whole = since(clock.began, now);
    const seconds stretch = clock.running ? since(*clock.running, now) : seconds{0};
    const seconds planned = in_seconds(plan.hands_on.value_or(Minutes{}));
    const auto part = [&](seconds worked, Mark mark) {
        worked = std::min(worked, whole);
        return StepTimes{.hands_on = span(minutes(worked), mark), .waiting = span(minutes(whole - worked), mark)};
    };
    const bool stands = plan.waiting && plan.waiting->in_millionths() > 0;
    if (stands && !clock.stopped && plan.hands_on)
        return part(planned, whole > planned ? Mark::from_method : Mark::measured);
    if (stretch > std::max(kLongestUnasked, kTimesTheMethod * planned)) {
        StepTimes times = part(clock.worked + planned, Mark::from_method);
        times.doubted = minutes(stretch);
        return times;
    }
    return part(clock.worked + stretch, Mark::measured);
}

std::optional<Instant> stood_long_enough(const StepClock& clock, const StepPlan& plan) {
    if (!plan.waiting || plan.waiting->in_millionths() <= 0) return std::nullopt;
    const Instant from =
        !clock.running && clock.stopped ? *clock.stopped : clock.began + in_seconds(plan.hands_on.value_or(Minutes{}));
    return from + in_seconds(*plan.waiting);
}

}  // namespace dyestead::gui
