// method_words.h - "your method says": what a step is to reach, and how a reading or a yield outside the method's band
// is put. It is the maker's own method, so it is told and not held against anyone.
#pragma once

#include <string>

#include "domain/decisions/method_bands.h"

namespace dyestead::reports {

// "at 48 to 52 °C, pH 8.5 to 9.5, 15 min hands-on, 8 h waiting"; blank where the method names nothing.
std::string step_targets(const MethodStep& step);

std::string outside_sentence(const Shop& shop, const OutsideBand& outside);

}  // namespace dyestead::reports
