// method_words.h - "your method says": how a reading or a yield outside the method's band is put. It is the
// maker's own method, so it is told and not held against anyone.
#pragma once

#include <string>

#include "domain/decisions/method_bands.h"

namespace dyestead::reports {

std::string outside_sentence(const Shop& shop, const OutsideBand& outside);

}  // namespace dyestead::reports
