// dye_yield.h - what does a kilogram of harvest give of a colour: how much powder, how strong, and how much of the
// standard that comes to?
//
// Over all vats on record, failed ones in: the worst season, all together (ratio of totals), the best; where no vat is
// finished, what a method for the colour states. Strength by shade tests; where less than half the powder is tested,
// what the plant states, else supposed as strong as bought and in a bad year a third as strong, as the verdict does.
// Strength and yield are tied (more powder is weaker), so the seasons of the standard are those of the product.
#pragma once

#include "domain/decisions/pigment_pool.h"
#include "domain/decisions/year_range.h"
#include "domain/facts/shop.h"

namespace dyestead {

struct DyeYield {
    SowingFigure powder_per_kg;  // g
    SowingFigure strength;       // g of the standard in one g of powder
    SowingFigure shade_per_kg;   // g of the standard
};

// `vats`: finished_vats() of the colour. `plant`: what it is grown from; may be null.
DyeYield dye_yield(const Records& records, const Colour& colour, const Plant* plant,
                   const std::vector<FinishedVat>& vats);

// Grams of an amount by weight.
std::optional<double> in_grams(const std::optional<Amount>& amount);

}  // namespace dyestead
