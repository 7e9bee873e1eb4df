// reorder_words.h - is a colour that runs short to be bought in or poured less of, and would one order do for two?
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/reorder.h"

namespace dyestead::reports {

// What is short and by when, the two ways out with what each costs, and which is the cheaper.
std::vector<std::string> colour_short_sentences(const Shop& shop, const ColourShort& colour);

std::vector<std::string> bought_twice_sentences(const Shop& shop, const BoughtTwice& twice);

}  // namespace dyestead::reports
