// bar_prices.h - for how much does a bar stand on the table, and what does a gram of the bought-in
// colourant cost landed?
#pragma once

#include "domain/decisions/records.h"
#include "domain/decisions/verdict.h"

namespace dyestead {

struct ShelfPrice {
    std::optional<double> price;
    PriceFrom from = PriceFrom::none;
};

struct ShelfPrices {
    ShelfPrice plain;
    ShelfPrice bought;
    ShelfPrice own;
};

// On a day: the price list; else what the maker believes people would pay; else, for a coloured bar,
// the plain price.
ShelfPrices shelf_prices(const Shop& shop, Key<Recipe> recipe, Key<Colour> colour, Day day);

struct LandedPrice {
    std::optional<double> per_gram;
    BoughtPriceFrom from = BoughtPriceFrom::none;
};

// Carriage in. All deliveries of the window together; else the last one before; else what was already
// here; else, where none was ever bought, the latest offer.
LandedPrice landed_price(const Records& records, Key<Material> material, Window days);

}  // namespace dyestead
