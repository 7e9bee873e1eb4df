// prices.h - what does each kind of bar cost to make again today, and what should it sell for?
//
// Replacement cost: what the recipe takes at today's offers (replacement of a lot that was gathered or left over
// too), rejects in, minutes as recorded at today's hourly target. Beside it what the bars on the shelf did cost.
// A bar sold as home-grown stands on what growing its colour costs, failures in; what the same shade would cost
// bought in is shown beside it.
#pragma once

#include <optional>
#include <vector>

#include "domain/decisions/loaf_needs.h"
#include "domain/decisions/pricing.h"

namespace dyestead {

// Of one good bar, in currency units.
struct BarCost {
    double materials = 0;  // colour in
    double colour = 0;     // of these
    double labour = 0;
    double overhead = 0;
    double minutes = 0;  // hands-on, bench and, for home-grown colour, bed and vat
    double without_labour() const { return materials + overhead; }
    double full() const { return without_labour() + labour; }
};

struct PriceAim {
    double margin = 0.40;      // of the net price; the program's own default
    double price_step = 0.50;  // shelf prices go up in these
};

struct BarPrice {
    Key<Material> bar;
    std::optional<BarCost> replacement;           // empty: no price on record for something it takes
    std::optional<double> colour_bought;          // the same shade bought in, for a home-grown bar
    std::vector<Key<Material>> without_price;     // what it takes and nobody offers
    std::vector<Unsaid> unsaid;                   // what the recipe leaves open
    std::optional<double> booked_without_labour;  // the newest lot made, per bar
    std::optional<double> booked_full;
    std::optional<double> shelf;       // today's
    std::optional<double> floor;       // to make and sell one more, own time not paid
    std::optional<double> for_hour;    // pays the hourly target, selling time in
    std::optional<double> for_margin;  // pays the margin on the net price
    std::optional<double> margin;      // at today's shelf price
    std::optional<double> per_hour;    // what an hour earns at it, selling time in
    // The point on the ladder that reaches both aims.
    std::optional<double> advised;
    bool under_aim = false;  // today's price is below it
};

struct Prices {
    PriceTerms terms;
    double selling_minutes = 0;  // a bar
    double selling_cost = 0;
    std::optional<double> hourly_target;
    std::vector<BarPrice> bars;  // all kinds a recipe makes, by name
};

Prices prices(const Shop& shop, const Ledger& ledger, const PriceAim& aim = {});

}  // namespace dyestead
