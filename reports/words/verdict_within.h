// verdict_within.h - what a verdict's break-evens are held against: today's values and the records.
#pragma once

#include "reports/words/breakeven_words.h"

namespace dyestead::reports {

Within within_reach(const Shop& shop, const Verdict& verdict);

}  // namespace dyestead::reports
