// cost_parts.h - a cost that is all of one part, for lines that are materials or running costs and nothing else.
#pragma once

#include "domain/values/cost.h"

namespace dyestead {

constexpr Cost cost_of_materials(Money money) {
    Cost cost;
    cost.materials = money;
    return cost;
}

constexpr Cost cost_of_overhead(Money money) {
    Cost cost;
    cost.overhead = money;
    return cost;
}

}  // namespace dyestead
