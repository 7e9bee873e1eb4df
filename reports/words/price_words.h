// price_words.h - does what shops pay, or what a bundle brings for each of its bars, clear what a bar costs?
#pragma once

#include <string>

#include "domain/decisions/prices.h"

namespace dyestead::reports {

// Blank where no price for shops, or no cost, is on record.
std::string wholesale_sentence(const Shop& shop, const BarPrice& bar);

// Which margin or markup the prices aim at, and since when they are the maker's own; what no price can reach.
std::string aim_sentence(const Prices& answer, const std::string& currency);

std::string bundle_sentence(const Shop& shop, const BundlePrice& bundle);

}  // namespace dyestead::reports
