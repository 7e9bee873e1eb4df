// sales_earned.h - what did each sale leave, and what had it cost to make what was sold? Own time not paid.
#pragma once

#include <map>

#include "gui/models/books.h"

namespace dyestead::gui {

struct SaleEarned {
    double making = 0;
    double left = 0;  // after sales tax, fees, postage and making
};

// Of all sales up to the day of the books, in one pass over them.
std::map<Key<Sale>, SaleEarned> sales_earned(const Books& books);

}  // namespace dyestead::gui
