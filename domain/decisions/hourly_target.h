// hourly_target.h - what is an hour of the one who works by default to bring on a day?
#pragma once

#include <optional>

#include "domain/facts/shop.h"

namespace dyestead {

// Currency units. Empty: nobody is one of the shop's own then, or no target is set.
std::optional<double> hourly_target(const Shop& shop, Day day);

}  // namespace dyestead
