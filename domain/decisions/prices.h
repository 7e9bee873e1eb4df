// prices.h - what does each kind of bar cost to make again today, and what should it sell for?
//
// Replacement cost: what the recipe takes at today's offers (replacement of a lot that was gathered or left over
// too), rejects in, minutes as recorded at today's hourly target. Beside it what the bars on the shelf did cost.
// A bar sold as home-grown stands on what growing its colour costs, failures in; what the same shade would cost
// bought in is shown beside it.
#pragma once

#include <optional>
#include <string>
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

// What a price is to bring beside the hour: a margin, which is a share of the net price, or a markup, which is a share
// of the full cost, or both.
struct PriceAim {
    std::optional<double> margin = 0.40;  // the program's own default, no source
    std::optional<double> markup{};
    double price_step = 0.50;       // shelf prices go up in these; the program's own default
    bool margin_is_default = true;  // as long as the maker has put down neither
};
// As the maker put it down by that day (PriceRule).
PriceAim price_aim(const Shop& shop, Day day);

// What shops that sell on are asked for a bar. Nobody stands at a stall for it: no selling time, none of the stall's
// cost; packing is not reckoned.
struct Wholesale {
    std::optional<double> price;      // the price for shops, else of the newest wholesale sale of the last 12 months
    bool listed = false;              // the former
    std::optional<double> floor;      // materials and fees come back
    std::optional<double> full_cost;  // running costs and own hours too
    std::optional<double> left;       // of the price, before own time
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
    std::optional<double> for_margin;  // pays the margin on the net price; nothing when no price does
    std::optional<double> for_markup;  // pays the markup on the full cost
    std::optional<double> margin;      // at today's shelf price
    std::optional<double> per_hour;    // what an hour earns at it, selling time in
    // The point on the ladder that reaches every aim that can be reached.
    std::optional<double> advised;
    bool under_aim = false;  // today's price is below it
    Wholesale wholesale;
};

// So many bars for one price, at a fair of the last 12 months or one to come: of those called and counted alike, the
// newest price.
struct BundlePrice {
    std::string what;
    int bars = 0;
    double price = 0;
    int sold = 0;                            // at that price in those months
    std::vector<Key<Material>> of;           // kinds with a known cost that lay on those tables
    std::vector<Key<Material>> under_floor;  // of these: a bar's part of the price is below its floor
    std::vector<Key<Material>> under_cost;   // or not that, but below its full cost
    std::optional<double> clears_floor;      // the price of the bundle that clears the floor of the dearest kind,
    std::optional<double> clears_cost;       // and its full cost
    double a_bar() const { return price / bars; }
};

struct Prices {
    PriceAim aim;
    PriceTerms terms;
    double selling_minutes = 0;  // a bar
    double selling_cost = 0;
    std::optional<double> hourly_target;
    std::vector<BarPrice> bars;  // all kinds a recipe makes, by name
    PriceTerms wholesale_terms;
    std::vector<BundlePrice> bundles;  // by name
};

Prices prices(const Shop& shop, const Ledger& ledger);
Prices prices(const Shop& shop, const Ledger& ledger, const PriceAim& aim);

}  // namespace dyestead
