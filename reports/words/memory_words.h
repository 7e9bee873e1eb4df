// memory_words.h - the ten questions and what came of answering them from memory, in words.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/memory.h"

namespace dyestead::reports {

// "How many hours did the bed take last season, everybody's together?" Requires: 1 to 10.
std::string memory_question(int question);
// What stands before one blank of a question: "Hands-on time for one".
std::string memory_blank(Recalled blank);
// How an answer may look: "like 12 h".
std::string memory_example(Recalled blank);

// An answer as typed, a word of the reader's language put back into that of the records: "halb" is "half".
std::string memory_answer(Recalled blank, const std::string& typed);

// Grown beside bought-in and plain, a bar, before one's time.
std::string memory_bar_line(const Shop& shop, const Verdict& verdict);
// "From memory: ..." and which record would make it surer first.
std::vector<std::string> memory_stands_on(const Verdict& verdict);

}  // namespace dyestead::reports
