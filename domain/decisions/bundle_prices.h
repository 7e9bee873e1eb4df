// bundle_prices.h - do so many bars for one price still clear what they cost? The part of prices.h that is about
// bundles.
//
// A bar's part of the price is held against the floor and the full cost of each kind that lay on the table: which of
// them went into a bundle nobody writes down.
#pragma once

#include "domain/decisions/prices.h"

namespace dyestead {

// Of the fairs of the last 12 months and those put down to come. `prices`: its bars and terms.
std::vector<BundlePrice> bundle_prices(const Records& records, const Prices& prices);

}  // namespace dyestead
