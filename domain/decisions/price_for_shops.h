// price_for_shops.h - what are shops that sell on asked for a bar, and does that clear what the bar costs? The part of
// prices.h that is about wholesale.
//
// Floor (materials + phi)/k, full cost (C + phi)/k, with the fees of the wholesale channel that are a share or so much
// a bar; what a payment costs is spread over an order nobody knows yet and left out.
#pragma once

#include "domain/decisions/prices.h"

namespace dyestead {

PriceTerms wholesale_terms(const Shop& shop, Day day);

// Requires: the replacement cost of `bar` is worked out.
Wholesale price_for_shops(const Records& records, const BarPrice& bar, const PriceTerms& terms);

}  // namespace dyestead
