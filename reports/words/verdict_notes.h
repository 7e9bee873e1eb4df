// verdict_notes.h - what is in the verdict that one might not expect, and what is left out of it?
// One sentence each; those that say nothing here are missing.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/verdict.h"

namespace dyestead::reports {

// The powder: what a gram cost, how much of it is used, what failed and is counted.
std::vector<std::string> powder_notes(const Shop& shop, const Verdict& verdict);
// Beds still standing, leaf not yet in a vat, vats not dry, money already spent either way.
std::vector<std::string> left_out_notes(const Shop& shop, const Verdict& verdict);
// Whether the colour is allowed, and what its plants and powders can do to people.
std::vector<std::string> verdict_cautions(const Shop& shop, const Verdict& verdict);

}  // namespace dyestead::reports
