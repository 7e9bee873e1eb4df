// figures.h - what do the gathered totals come to per bar, per gram and per season, at a strength?
#pragma once

#include "domain/decisions/bar_prices.h"
#include "domain/decisions/base_loaf.h"
#include "domain/decisions/selling.h"
#include "domain/decisions/strength.h"
#include "domain/decisions/verdict.h"

namespace dyestead {

// Everything the figures are worked out from but the strength.
struct Gathered {
    const Colour* colour = nullptr;
    PigmentPool pool;
    BaseLoaf base;  // good_bars 0: none
    ShelfPrices prices;
    Selling selling;
    LandedPrice landed;
    std::optional<double> dose_per_bar;  // Q
    std::optional<double> powder_price;  // a gram of the powder itself, as the customer pays
    std::optional<double> target;        // W
    std::optional<double> soap_hour;
    double sales_tax = 0;
    std::optional<Stand> stand;  // looking ahead

    std::optional<double> hurdle() const;
};

// The model over a pool (the window's, or one season's). Empty while it lacks a price, a dose, a
// colourant to compare with, powder, or the weight of the harvest.
std::optional<Model> model_of(const Gathered& gathered, const PigmentPool& pool, double strength);

struct CompareTerms {
    std::optional<double> target;  // W
    std::optional<double> hurdle;
    bool plain_price_known = false;
    std::optional<Stand> stand;  // looking ahead
};
// Differences, break-evens and what an extra hour earned, from figures.model. Requires: there is one.
void compare(VerdictFigures& figures, const CompareTerms& terms);

// `tested`: the strength is on record, not supposed.
VerdictFigures figures_at(const Gathered& gathered, double strength, bool tested);

}  // namespace dyestead
