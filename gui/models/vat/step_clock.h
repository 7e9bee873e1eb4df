// step_clock.h - how long was a step worked, and how long did it stand, by keys pressed at the pan?
// Moments are told, never asked: they are seconds of universal time, so that a night when the clocks change is as long
// as it was.
#pragma once

#include <chrono>
#include <optional>

#include "domain/facts/method.h"

namespace dyestead::gui {

using Instant = std::chrono::sys_seconds;

struct StepClock {
    Instant began{};                   // the step
    std::optional<Instant> running{};  // since when; none: stopped
    std::optional<Instant> stopped{};  // when last; none: never in this step
    std::chrono::seconds worked{};     // before the stretch that runs
};

// Running from now on.
StepClock begun(Instant now);
// Stops it where it runs, else lets it run on.
void stop_or_go_on(StepClock& clock, Instant now);

// What the method says of the step, for this vat: minutes of work, minutes of standing; none where it says nothing.
struct StepPlan {
    std::optional<Minutes> hands_on{};
    std::optional<Minutes> waiting{};
};

struct StepTimes {
    Span hands_on{};
    Span waiting{};
    // What the clock had run when that cannot have been work all along; the method's time then stands for it, marked
    // so.
    std::optional<Minutes> doubted{};
};

// A clock that was never stopped in a step that has to stand has run through the standing: the method's time is the
// work, the rest stood. One that has run longer than anybody works at one step is not believed either: a night is not
// booked as work. That is more than two hours and more than three times what the method says (our own rule).
StepTimes times_at(const StepClock& clock, Instant now, const StepPlan& plan);

// When the step has stood as long as the method says; none when it says nothing of standing. While the clock runs, from
// when the method's work should be done.
std::optional<Instant> stood_long_enough(const StepClock& clock, const StepPlan& plan);

}  // namespace dyestead::gui
