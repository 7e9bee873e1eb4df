// title_words.h - what a change to the shop was, in the reader's language: for "Undo cut of 3 July".
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "domain/text/trouble.h"

namespace dyestead::reports {

// `code` as the log has it: an English sentence with {names}, or the code of an import.
std::string title_words(std::string_view code, const std::vector<TroubleArg>& args);

}  // namespace dyestead::reports
