// doubt.h - how sure is it? What the next season might bring, going by how much the vats and seasons on record differ.
//
// The sample is seasons, then vats within them. Each vat that gave powder is one point: log g a kilo, log of its
// minutes over those usual for its weight, log strength. Our own defaults, not published:
//   8 vats or more: means and covariance of the logs, what lies off the diagonal halved;
//   4 to 7: variances, and one correlation of yield and strength (more powder is weaker);
//   2 or 3: only the least, the middle and the most on record, no chance;
//   one season: no chance either, only a bad, a usual and a good one.
// Strength, until two vats' powders are tested, spreads as the maker says of the plant (a bad, a usual, a good year, as
// PERT), else as yields do.
// Draws are predictive: Student's t with n - 1 degrees, scale times sqrt(1 + 1/n), the season's part shared by all its
// vats (half the variance while fewer than three seasons tell). A vat that gives nothing and a crop that is lost are
// drawn from their counts, the chance itself from Jeffreys' beta. The same question gives the same answer.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "domain/decisions/model.h"

namespace dyestead {

// A finished vat, for the doubt's sample.
struct VatPoint {
    int season = 0;
    double kg = 0;
    double grams = 0;  // 0: it gave nothing
    double minutes = 0;
    std::optional<double> strength;
};

struct Band {
    double bad = 0;
    double usual = 0;
    double good = 0;
};

struct DoubtInput {
    Model model;  // a usual season's
    bool plain_price_known = false;
    bool crop_can_fail = false;         // it is not sown yet
    std::optional<double> target;       // W
    std::optional<double> hurdle;       // h
    std::optional<double> cash_margin;  // of a home bar, usual
    std::optional<double> full_margin;
    std::vector<VatPoint> vats;                // of the window
    int plantings = 0;                         // of the colour that came to a harvest, or were lost
    int plantings_lost = 0;                    // of these
    double garden_cash_of_lost = 0;            // a kilo: what lost plantings add to the model's garden cash
    double garden_minutes_of_lost = 0;         // a kilo
    double yield_strength_correlation = -0.5;  // with 4 to 7 vats
    // What the maker says of the plant's strength, drawn from while fewer than two vats' powders are tested.
    std::optional<Band> strength_stated;
};

enum class DoubtOf : std::uint8_t { yield, vat_time, strength, failed_vats, lost_crop };

// One input from a bad year to a good one (P10 to P90), all others usual.
struct Matter {
    DoubtOf of{};
    Band season;  // home less bought over the season, at the hurdle, at its bad, usual and good
    // What knowing it beforehand would be worth in a season: the choice between growing and not could follow it.
    double perfect_forecast = 0;
    // How much of this input's own spread one more record of it (a vat, a shade test, a planting) would leave; empty
    // where no record of it says yet how it spreads.
    std::optional<double> one_more;
    // Where working a vat loses, a season with less to work comes out better.
    double swing() const { return season.good > season.bad ? season.good - season.bad : season.bad - season.good; }
};

enum class DoubtKind : std::uint8_t {
    unknown,   // one vat, or none
    extremes,  // the least, the middle, the most on record
    one_season,
    chance,
};

struct Doubt {
    DoubtKind kind = DoubtKind::unknown;
    int vats = 0;         // that gave powder
    int seasons = 0;      // with such a vat
    int season_vats = 0;  // in the season to come, as in the last
    // That home comes out ahead over the season, own time at the hourly target; `_cash` without it.
    std::optional<double> home_beats_bought;
    std::optional<double> home_beats_plain;
    std::optional<double> home_beats_bought_cash;
    std::optional<double> home_beats_plain_cash;
    std::optional<Band> cash_margin;      // of a home bar, in a season that gives any
    std::optional<Band> full_margin;      // as above
    std::optional<Band> earned_per_hour;  // by an extra dye hour
    std::optional<Band> at_hurdle;        // the season, home less bought, with today's premium
    std::optional<Band> at_hurdle_no_premium;
    std::vector<Matter> matters;            // what matters most first
    std::optional<double> one_more_season;  // how much of the spread one more season of as many vats would leave
};

inline constexpr int kDraws = 100'000;

Doubt doubt(const DoubtInput& input, int draws = kDraws);

}  // namespace dyestead
