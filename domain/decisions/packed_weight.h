// packed_weight.h - by how much may a single pack fall short of the weight that stands on it?
//
// Council Directive 76/211/EEC, Annex I, 2.4 (United Kingdom: Weights and Measures (Packaged Goods) Regulations 2006,
// the same table). The mean of a batch must not fall short at all, and no pack by twice as much. Whether these rules
// hold where the bars are sold is for the local weights authority to say.
#pragma once

#include <optional>

#include "domain/values/quantity.h"

namespace dyestead {

// Rounded up to a tenth of a gram or millilitre. Nothing below 5 g or ml, or for what is not weighed or measured out.
std::optional<Quantity> tolerated_shortfall(Quantity declared);

}  // namespace dyestead
