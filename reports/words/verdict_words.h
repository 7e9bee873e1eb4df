// verdict_words.h - what does the verdict say? One sentence, three lines and what it stands on.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/verdict.h"

namespace dyestead::reports {

// "Buy the blue in: growing it took 18 hours and left you £15 worse off than buying it."
std::string verdict_headline(const Shop& shop, const Verdict& verdict);

// The question: "Is growing the blue worth the hours?"; looking ahead, from where one stands.
std::string verdict_title(const Shop& shop, const Verdict& verdict);

// Blank where the figures for it are missing.
std::string each_bar_line(const Shop& shop, const Verdict& verdict);
std::string your_hours_line(const Shop& shop, const Verdict& verdict);
std::string what_would_turn_it_line(const Shop& shop, const Verdict& verdict);

// Small, always there.
std::string stands_on_line(const Shop& shop, const Verdict& verdict);

// Where the strength is not tested: what it would come to at either strength, and which record is
// missing first. One sentence each.
std::vector<std::string> too_soon_lines(const Shop& shop, const Verdict& verdict);

}  // namespace dyestead::reports
