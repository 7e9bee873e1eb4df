#include "domain/decisions/demand.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace dyestead {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kTail = 1e-12;     // chances smaller than this are left to the last number
constexpr int kMostWanted = 5'000;  // beyond any table

double log_poisson(double mean, int n) {
    if (mean <= 0) return n == 0 ? 0 : -kInfinity;
    return n * std::log(mean) - mean - std::lgamma(n + 1.0);
}

// P(D >= n) for a Poisson demand.
double at_least(double mean, int n) {
    constexpr double kFarthest = 600;  // beyond it exp(-mean) is nought to a double
    double below = 0;
    if (mean > 0 && mean < kFarthest) {
        double term = std::exp(-mean);
        for (int k = 0; k < n; ++k) {
            below += term;
            term *= mean / (k + 1);
        }
    } else {
        for (int k = 0; k < n; ++k) below += std::exp(log_poisson(mean, k));
    }
    return std::max(0.0, 1 - below);
}

// The rate's gamma density at a grid of rates, equally weighted: midpoints of equal chance would need its
// quantiles, so a fine grid in the logarithm of the rate carries density times width instead.
struct Grid {
    std::vector<double> rate;
    std::vector<double> weight;
};

Grid posterior(const RatePrior& prior, const std::vector<DemandRecord>& records) {
    constexpr int kSteps = 1'200;
    double sold = prior.shape;
    double exposure = prior.exposure;
    // A rate's Poisson chances of all that was not sold out come to rate^sold exp(-rate exposure), but for a factor
    // that no rate changes. What was sold out is reckoned once for all days alike.
    double told_sold = prior.shape;
    double told_exposure = prior.exposure;
    std::map<std::pair<double, int>, int> sold_out;
    for (const DemandRecord& each : records) {
        sold += each.sold;
        exposure += each.exposure;
        if (each.sold_out) {
            ++sold_out[{each.exposure, each.sold}];
        } else {
            told_sold += each.sold;
            told_exposure += each.exposure;
        }
    }
    const double centre = std::log(sold / exposure);
    // Wide enough for the slowest and the fastest rate that could matter, censored records in.
    const double reach = 12 / std::sqrt(std::max(sold, 0.25)) + 3;
    const auto log_rate = [&](int i) { return centre - reach + 2 * reach * (i + 0.5) / kSteps; };
    // Density times rate, for the log grid; what was sold out can only make it less.
    const auto told = [&](int i) { return told_sold * log_rate(i) - told_exposure * std::exp(log_rate(i)); };
    const auto log_weight = [&](int i) {
        double sum = told(i);
        for (const auto& [day, days] : sold_out)
            sum += days * std::log(std::max(at_least(std::exp(log_rate(i)) * day.first, day.second), 1e-300));
        return sum;
    };
    // What is so far under the middle one weighs nothing to a double.
    constexpr double kNothing = 690;
    const double least = log_weight(kSteps / 2) - kNothing;
    Grid grid;
    std::vector<double> logs;
    for (int i = 0; i < kSteps; ++i) {
        if (told(i) < least) continue;
        const double log = log_weight(i);
        if (log < least) continue;
        grid.rate.push_back(std::exp(log_rate(i)));
        logs.push_back(log);
    }
    const double most = *std::ranges::max_element(logs);
    double sum = 0;
    for (const double each : logs) {
        grid.weight.push_back(std::exp(each - most));
        sum += grid.weight.back();
    }
    for (double& each : grid.weight) each /= sum;
    return grid;
}

}  // namespace

double Demand::expected() const {
    double sum = 0;
    for (std::size_t n = 0; n < chance.size(); ++n) sum += static_cast<double>(n) * chance[n];
    return sum;
}

double Demand::at_most(int n) const {
    double sum = 0;
    for (int k = 0; k <= n && k < static_cast<int>(chance.size()); ++k) sum += chance[static_cast<std::size_t>(k)];
    return std::min(1.0, sum);
}

double Demand::sold(int n) const {
    double sum = 0;
    double reached = 0;
    for (int k = 0; k < n && k < static_cast<int>(chance.size()); ++k) {
        sum += k * chance[static_cast<std::size_t>(k)];
        reached += chance[static_cast<std::size_t>(k)];
    }
    return sum + n * std::max(0.0, 1 - reached);
}

int Demand::enough_for(double chance_of_enough) const {
    double reached = 0;
    for (std::size_t n = 0; n < chance.size(); ++n) {
        reached += chance[n];
        if (reached >= chance_of_enough) return static_cast<int>(n);
    }
    return static_cast<int>(chance.size()) - 1;
}

Demand poisson(double mean) {
    Demand demand;
    double reached = 0;
    for (int n = 0; n <= kMostWanted; ++n) {
        demand.chance.push_back(std::exp(log_poisson(mean, n)));
        reached += demand.chance.back();
        if (n > mean && 1 - reached < kTail) break;
    }
    demand.chance.back() += std::max(0.0, 1 - reached);
    return demand;
}

RatePrior prior_from(const std::vector<std::vector<DemandRecord>>& kinds) {
    std::vector<double> rates;
    double exposure = 0;
    for (const auto& records : kinds) {
        double sold = 0;
        double over = 0;
        for (const DemandRecord& each : records) {
            sold += each.sold;
            over += each.exposure;
        }
        if (!(over > 0)) continue;
        rates.push_back(sold / over);
        exposure += over;
    }
    if (rates.empty()) return {1, 1};
    double mean = 0;
    for (const double each : rates) mean += each / static_cast<double>(rates.size());
    if (!(mean > 0)) return {1, exposure};  // nothing was ever sold: about one in all that time
    double spread = 0;
    for (const double each : rates) spread += (each - mean) * (each - mean);
    spread /= std::max<double>(1, static_cast<double>(rates.size()) - 1);
    // Kinds that sell alike say much about one another, a single kind says nothing about itself: between a
    // quarter of a bar's worth of evidence and twenty.
    const double shape = spread > 0 ? std::clamp(mean * mean / spread, 0.25, 20.0) : 1.0;
    return {shape, shape / mean};
}

Demand forecast(const RatePrior& prior, const std::vector<DemandRecord>& records, double exposure) {
    if (!(exposure > 0)) return Demand{{1.0}};
    const Grid grid = posterior(prior, records);
    Demand demand;
    double reached = 0;
    std::vector<double> term(grid.rate.size());
    for (std::size_t i = 0; i < term.size(); ++i) term[i] = std::exp(-grid.rate[i] * exposure);
    double mean = 0;
    for (std::size_t i = 0; i < term.size(); ++i) mean += grid.weight[i] * grid.rate[i] * exposure;
    // Slow rates are done with first, the fastest are nought from the beginning.
    std::size_t first = 0;
    std::size_t end = term.size();
    while (end > 0 && term[end - 1] == 0) --end;
    const auto is_over = [&](std::size_t i, int n) {
        constexpr double kNothing = 1e-60;
        return n > grid.rate[i] * exposure && grid.weight[i] * term[i] < kNothing;
    };
    for (int n = 0; n <= kMostWanted; ++n) {
        double chance = 0;
        while (first < end && is_over(first, n)) ++first;
        for (std::size_t i = first; i < end; ++i) {
            chance += grid.weight[i] * term[i];
            term[i] *= grid.rate[i] * exposure / (n + 1);
        }
        demand.chance.push_back(chance);
        reached += chance;
        if (n > mean && 1 - reached < 1e-9) break;
    }
    demand.chance.back() += std::max(0.0, 1 - reached);
    return demand;
}

double worth_of_one_more(const Demand& demand, int taken, double gain, double loss) {
    const double enough = demand.at_most(taken);
    return gain * (1 - enough) - loss * enough;
}

int best_to_take(const Demand& demand, double gain, double loss, int available) {
    int taken = 0;
    while (taken < available && worth_of_one_more(demand, taken, gain, loss) > 0) ++taken;
    return taken;
}

}  // namespace dyestead
