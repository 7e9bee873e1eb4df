// shop_hour.h - what did an hour in the shop earn in a period: takings less money out, over all own hours?
// Money as it came and went, not cost of sales: what was bought and is still on the shelf counts as spent.
#pragma once

#include <optional>

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"

namespace dyestead {

struct ShopHour {
    double taken = 0;  // currency units
    double spent = 0;
    double hours = 0;                // of the shop's own people, whatever they were for
    std::optional<double> per_hour;  // nothing without hours
};

ShopHour shop_hour(const Shop& shop, const Ledger& ledger, Period period);

}  // namespace dyestead
