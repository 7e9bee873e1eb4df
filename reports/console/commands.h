// commands.h - what can dyestead-books be told to do? Each command adds itself to the command line
// and leaves in `run` what it does when it was the one asked for.
#pragma once

#include <CLI/App.hpp>
#include <functional>

namespace dyestead::console {

// What the shell sees.
inline constexpr int kDone = 0;
inline constexpr int kCheckFailed = 1;  // integrity, seals or conservation
inline constexpr int kRefused = 2;      // a wrong argument, a bad record, a file that cannot be opened
inline constexpr int kOwnFault = 3;     // a bug of the program

// Returns what the shell sees. Throws: ShopTrouble, RecordsRefused, Refused.
using Run = std::function<int()>;

void add_import(CLI::App& app, Run& run);
void add_export(CLI::App& app, Run& run);
void add_check(CLI::App& app, Run& run);
void add_report(CLI::App& app, Run& run);
void add_ask(CLI::App& app, Run& run);

}  // namespace dyestead::console
