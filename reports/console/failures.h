// failures.h - turns whatever went wrong into one line each on stderr, and into what the shell sees.
#pragma once

#include <stdexcept>
#include <utility>

#include "domain/text/trouble.h"
#include "reports/console/commands.h"

namespace dyestead::console {

// A question to the program that it cannot answer as put.
struct Refused : std::runtime_error {
    explicit Refused(Trouble what) : std::runtime_error("refused"), trouble{std::move(what)} {}
    Trouble trouble;
};

int guarded(const Run& run);

void say_on_stderr(const std::string& line);

}  // namespace dyestead::console
