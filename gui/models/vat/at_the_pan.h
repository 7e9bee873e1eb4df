// at_the_pan.h - a vat worked live: which step is on, what was read, how long the clock has run, and what one key
// keeps. What is not yet kept lives among the drafts, so that closing the program loses neither the clock nor the
// waiting.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "domain/values/moment.h"
#include "gui/models/form/form.h"
#include "gui/models/vat/step_clock.h"

namespace dyestead::gui {

// The desktop's clock, told: now, and what a moment is called where the maker lives.
struct WallClock {
    Instant now{};
    std::function<Moment(Instant)> local{};
};

struct AtThePan {
    Key<Vat> vat{};
    StepClock clock{};
    std::string temperature{};  // as typed; blank or - when not measured
    std::string acidity{};
    std::optional<int> again{};  // a step of the method that is done once more
};

// As a draft: its form's code, its fields, and back. Nothing when the draft is not one of these or cannot be read.
std::string pan_code(Key<Vat> vat);
std::vector<std::pair<std::string, std::string>> pan_texts(const AtThePan& pan);
std::optional<AtThePan> read_pan(const std::string& code,
                                 const std::vector<std::pair<std::string, std::string>>& fields);

// The clock of a vat that was worked at the pan and left without being stopped.
struct RunningClock {
    Key<Vat> vat;
    Moment since;
    friend bool operator==(const RunningClock&, const RunningClock&) = default;
};

// What the window shows, in sentences; blank ones are left out.
struct PanShown {
    std::string title;   // "Vat of 3 July 2026, blue: step 9 of 14"
    std::string step;    // "Draw off the clear"
    std::string target;  // "Your method says: 8 h waiting."
    std::string caution;
    std::string clock;     // "The clock has run 12 min."
    std::string standing;  // "It has stood 35 min; your method says 8 h: look again at 18:05."
    std::string trouble;   // what is wrong with a reading
    bool running = false;
    bool can_be_done = false;      // false when no step is left
    bool can_be_repeated = false;  // the step before may be done once more
};
PanShown shown_at_the_pan(const Books& books, const AtThePan& pan, const WallClock& clock);

// Keeps the step as done, and begins the next one in `pan`. Nothing when a reading cannot be read or no step is left;
// then `shown_at_the_pan` says why.
std::optional<Kept> step_done(const Writing& writing, AtThePan& pan, const WallClock& clock);
// The step before once more, where the method has it done several times: the liquor is not clear yet.
void once_more(const Books& books, AtThePan& pan, Instant now);

// "The vat of 3 July 2026, blue, has stood 8 h, as your method says." Blank while there is nothing to say.
std::string stood_sentence(const Books& books, const AtThePan& pan, const WallClock& clock);

// The standing vat that is meant: the one that is selected, else the one begun first. Nothing when none stands.
std::optional<Key<Vat>> vat_at_the_pan(const Books& books, std::optional<FactRef> selected);

}  // namespace dyestead::gui
