// arguments.h - what was wrong with the command line, as one sentence of ours, and what --help calls its parts.
#pragma once

#include <CLI/App.hpp>
#include <string>

namespace dyestead::console {

// Before anything is added to it.
void name_the_parts_of_help(CLI::App& app);

// The library says the same in English only. `app`: after it refused.
std::string wrong_arguments(const CLI::App& app, const CLI::ParseError& wrong);

// For an option: a whole number, or any, that is no smaller and no larger.
CLI::Option* takes_whole_number(CLI::Option* option, int low, int high);
CLI::Option* takes_number(CLI::Option* option, int low, int high);

}  // namespace dyestead::console
