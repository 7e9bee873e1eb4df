// demand.h - how many will be asked for, and how many should be taken?
//
// A demand is the chance of each whole number. Bars of a kind are asked for at a rate that is itself uncertain
// (gamma), and at that rate by chance (Poisson); a day on which all were sold only says that at least so many
// were wanted. Doubles: forecasts.
#pragma once

#include <optional>
#include <vector>

namespace dyestead {

struct Demand {
    std::vector<double> chance;  // of 0, 1, 2 ... wanted; adds up to 1

    double expected() const;
    double at_most(int n) const;  // P(D <= n)
    double sold(int n) const;     // expected, of n taken
    double left(int n) const { return n - sold(n); }
    // The smallest n with P(D <= n) at least so much.
    int enough_for(double chance_of_enough) const;
};

Demand poisson(double mean);

// A day on record: `sold` of a kind in an exposure (hours at the stall, times how busy that fair is).
struct DemandRecord {
    double exposure = 0;
    int sold = 0;
    bool sold_out = false;  // at least so many were wanted
};

// What was known of the rate before these records: a gamma distribution.
struct RatePrior {
    double shape = 1;
    double exposure = 1;  // shape / exposure is the mean rate
};
// From the rates of all kinds together, by their mean and spread. `kinds`: one list of records each.
RatePrior prior_from(const std::vector<std::vector<DemandRecord>>& kinds);

// In so much exposure to come.
Demand forecast(const RatePrior& prior, const std::vector<DemandRecord>& records, double exposure);

// One more after n is worth gain P(D > n) - loss P(D <= n): the n at which that is no longer above nought.
// `gain`: what a bar sold brings over keeping it; `loss`: what carrying one in vain costs.
double worth_of_one_more(const Demand& demand, int taken, double gain, double loss);
int best_to_take(const Demand& demand, double gain, double loss, int available);

}  // namespace dyestead
