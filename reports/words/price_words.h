// price_words.h - does what shops pay, or what a bundle brings for each of its bars, clear what a bar costs?
#pragma once

#include <string>

#include "domain/decisions/prices.h"

namespace dyestead::reports {

// Blank where no price for shops, or no cost, is on record.
std::string wholesale_sentence(const Shop& shop, const BarPrice& bar);

std::string bundle_sentence(const Shop& shop, const BundlePrice& bundle);

}  // namespace dyestead::reports
