// selling.h - what do selling, and being paid, take for each bar sold?
//
// Over all kinds of bar together, the same for every alternative. Fairs cut short or called off count. Powder sold as
// it is does not, with its part of what was paid, posted and packed with it (Taking::of_powder).
#pragma once

#include "domain/decisions/records.h"
#include "domain/decisions/window.h"

namespace dyestead {

struct Selling {
    double bars = 0;         // sold, less returned
    double takings = 0;      // as the customers paid for bars, less refunds
    double fee_share = 0;    // f: percentage fees / takings
    double fee_per_bar = 0;  // phi: (fees a payment + bags) / bars sold
    // Stall fees, travel, postage less what buyers paid of it, paid help; own hours at fairs and packing. Empty:
    // nothing was sold.
    std::optional<double> cost_per_bar;
    std::optional<double> minutes_per_bar;

    // What one further sale at a shelf price costs in fees.
    double fees(double shelf_price) const { return fee_share * shelf_price + fee_per_bar; }
};

// Where nothing was sold, the fees are those in force for the card channel, as if each bar was paid
// for by itself, and for bags.
Selling selling(const Records& records, Window days);

// Bars of one kind sold in those days, less returned.
double bars_sold(const Records& records, Key<Material> bar, Window days);

// How fairs went that were stood to their end.
struct FairsStood {
    int fairs = 0;
    int with_bars_back = 0;
};
FairsStood fairs_stood(const Records& records, Window days);

// The share of a kind of bar taken to those fairs that was sold there. Empty: none was taken to any.
std::optional<double> share_sold(const Records& records, Key<Material> bar, Window days);

}  // namespace dyestead
