// method_split.h - of what went in at the vats, how much does not grow with the harvest, going by their methods?
//
// Each amount follows its own line of the method: so much a vat, a kilogram, or a litre (as the method's water
// does). What a window's vats took of a material is parted as the methods would have had them take it, so that
// recorded over modelled scales it; time, wages and heat likewise (heat as water). What no method speaks of
// grows with the harvest. A vat without a method: all its money grows, all its time is the vat's.
#pragma once

#include <vector>

#include "domain/decisions/pigment_pool.h"

namespace dyestead {

struct VatSplit {
    double cash = 0;  // recorded
    double cash_fixed = 0;
    double minutes = 0;
    double minutes_fixed = 0;
    int without_method = 0;  // vats

    double cash_share() const { return cash > 0 ? cash_fixed / cash : 0; }
    double minutes_share() const { return minutes > 0 ? minutes_fixed / minutes : 0; }
};

VatSplit split_by_method(const Records& records, const std::vector<FinishedVat>& vats);

}  // namespace dyestead
