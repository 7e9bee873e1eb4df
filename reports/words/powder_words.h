// powder_words.h - is a gram of the colour worth more as powder or in soap, in one sentence?
#pragma once

#include <string>

#include "domain/decisions/verdict.h"

namespace dyestead::reports {

// Blank where no price of the powder is on record, or what it takes to make is not known.
std::string powder_line(const Shop& shop, const Verdict& verdict);

// To whom powder is sold, and under which rules, is not the program's to say; blank where powder_line is.
std::string powder_caution(const Verdict& verdict);
// The same, where powder is sold.
std::string powder_selling_caution();

}  // namespace dyestead::reports
