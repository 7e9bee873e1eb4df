// caution_words.h - where the work can hurt someone, or cost more than it seems, it is said: briefly,
// and also on paper.
#pragma once

#include <string>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead::reports {

// Blank for Caution::none. `things`: the plants and materials it is about, "madder; madder lake".
std::string caution_sentence(Caution caution, const std::string& things);

// Whether the colour is allowed where it is sold; nothing once the answer is yes. Null: nobody was asked.
std::string allowed_sentence(const std::string& colour, const Allowed* newest);

// Beside every verdict: what it is not, and what its earnings leave out.
std::string verdict_is_a_sum();

// On every paper with lye on it.
std::string lye_caution();

// What holds at every vat, and wherever bars are sold.
std::vector<std::string> vat_cautions();
std::vector<std::string> stall_cautions();

}  // namespace dyestead::reports
