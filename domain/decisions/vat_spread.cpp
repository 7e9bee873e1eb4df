#include "domain/decisions/vat_spread.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace dyestead {
namespace {

constexpr std::size_t kYield = 0;
constexpr std::size_t kStrength = 2;
// With so many vats on record covariances are believed, halved.
constexpr int kEnoughForCovariance = 8;
constexpr int kEnoughSeasons = 3;

using Matrix = std::array<Spreads, kSpreads>;

struct Point {
    int season = 0;
    Spreads logs{};
    bool tested = false;
};

// Sums over pairs of points that have both numbers.
Matrix covariance(const std::vector<Point>& points, const Spreads& mean) {
    Matrix result{};
    for (std::size_t a = 0; a < kSpreads; ++a)
        for (std::size_t b = 0; b <= a; ++b) {
            int count = 0;
            double sum = 0;
            for (const Point& point : points) {
                if (a == kStrength && !point.tested) continue;
                ++count;
                sum += (point.logs[a] - mean[a]) * (point.logs[b] - mean[b]);
            }
            result[a][b] = count > 1 ? sum / (count - 1) : 0;
        }
    return result;
}

// Cholesky; what a covariance put together from unlike samples lacks to be one is taken as nought.
Matrix root_of(const Matrix& covariance) {
    Matrix root{};
    for (std::size_t a = 0; a < kSpreads; ++a)
        for (std::size_t b = 0; b <= a; ++b) {
            double rest = covariance[a][b];
            for (std::size_t k = 0; k < b; ++k) rest -= root[a][k] * root[b][k];
            if (a == b)
                root[a][a] = std::sqrt(std::max(0.0, rest));
            else
                root[a][b] = root[b][b] > 0 ? rest / root[b][b] : 0;
        }
    return root;
}

// PERT, in logs, low and high its ends: a beta whose mean is (low + 4 usual + high)/6, and whose variance is
// (mean - low)(high - mean)/7.
std::optional<double> stated_variance(const std::optional<Band>& stated) {
    if (!stated || stated->bad <= 0 || stated->usual < stated->bad || stated->good < stated->usual) return std::nullopt;
    const double low = std::log(stated->bad);
    const double high = std::log(stated->good);
    const double mean = (low + 4 * std::log(stated->usual) + high) / 6;
    return (mean - low) * (high - mean) / 7;
}

// One-way analysis of variance of the yields by season.
double season_share(const std::vector<Point>& points) {
    std::map<int, std::vector<double>> by_season;
    for (const Point& point : points) by_season[point.season].push_back(point.logs[kYield]);
    const auto seasons = static_cast<double>(by_season.size());
    const auto all = static_cast<double>(points.size());
    if (by_season.size() < kEnoughSeasons || points.size() == by_season.size()) return 0.5;
    double mean = 0;
    for (const Point& point : points) mean += point.logs[kYield] / all;
    double within = 0;
    double between = 0;
    double squares = 0;
    for (const auto& [season, yields] : by_season) {
        const auto count = static_cast<double>(yields.size());
        double of_season = 0;
        for (const double yield : yields) of_season += yield / count;
        for (const double yield : yields) within += (yield - of_season) * (yield - of_season);
        between += count * (of_season - mean) * (of_season - mean);
        squares += count * count;
    }
    within /= all - seasons;
    between /= seasons - 1;
    const double vats_a_season = (all - squares / all) / (seasons - 1);
    const double by_weather = std::max(0.0, (between - within) / vats_a_season);
    return by_weather + within > 0 ? by_weather / (by_weather + within) : 0.5;
}

}  // namespace

Spreads logs_of(const VatPoint& vat, const Model& model) {
    const double usual = model.vat_minutes_fixed + model.vat_minutes_per_kg * vat.kg;
    // Nobody works a vat in less than a minute; a vat without time on record is taken as a usual one.
    const double minutes = vat.minutes > 0 && usual > 0 ? std::max(1.0, vat.minutes) / usual : 1;
    return {std::log(vat.grams / vat.kg), std::log(minutes), std::log(vat.strength.value_or(model.strength))};
}

VatSpread vat_spread(const DoubtInput& input) {
    std::vector<Point> points;
    for (const VatPoint& vat : input.vats)
        if (vat.grams > 0 && vat.kg > 0)
            points.push_back({vat.season, logs_of(vat, input.model), vat.strength.has_value()});
    VatSpread spread;
    spread.vats = static_cast<int>(points.size());
    std::map<int, int> seasons;
    int tested = 0;
    for (const Point& point : points) {
        ++seasons[point.season];
        tested += point.tested ? 1 : 0;
        for (std::size_t i = 0; i < kSpreads; ++i) spread.mean[i] += point.logs[i] / static_cast<double>(points.size());
    }
    spread.seasons = static_cast<int>(seasons.size());
    // The tested ones stand for all: those not tested have the strength of all together.
    if (tested > 0) {
        spread.mean[kStrength] = 0;
        for (const Point& point : points)
            if (point.tested) spread.mean[kStrength] += point.logs[kStrength] / tested;
    }
    Matrix found = covariance(points, spread.mean);
    // One test says nothing of how powders differ: as the maker says of the plant, else as yields do.
    if (tested < 2)
        found[kStrength][kStrength] = stated_variance(input.strength_stated).value_or(found[kYield][kYield]);
    for (std::size_t a = 0; a < kSpreads; ++a)
        for (std::size_t b = 0; b < a; ++b)
            found[a][b] = spread.vats >= kEnoughForCovariance && tested > 1 ? found[a][b] / 2 : 0;
    if (spread.vats < kEnoughForCovariance)
        found[kStrength][kYield] =
            input.yield_strength_correlation * std::sqrt(found[kYield][kYield] * found[kStrength][kStrength]);
    spread.root = root_of(found);
    spread.season_share = season_share(points);
    return spread;
}

}  // namespace dyestead
