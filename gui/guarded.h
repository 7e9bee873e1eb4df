// guarded.h - runs what an event asks for; whatever it throws becomes one sentence in the window, and the window goes
// on. Around every handler and every CallAfter: from there an exception would end the program.
#pragma once

#include <exception>
#include <functional>
#include <string_view>

namespace dyestead::gui {

// Says what went wrong: the person's file or disk in its own sentence, our own bug as such.
using FailureSink = std::function<void(std::string_view sentence)>;
void set_failure_sink(FailureSink sink);

// `what` names the doing, for the log: "opening a shop file".
void report_failure(std::string_view what, const std::exception_ptr& failure) noexcept;

template <class Do>
void guarded(std::string_view what, Do&& act) noexcept {
    try {
        act();
    } catch (...) {
        report_failure(what, std::current_exception());
    }
}

}  // namespace dyestead::gui
