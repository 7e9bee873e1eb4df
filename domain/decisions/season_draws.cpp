#include "domain/decisions/season_draws.h"

#include <algorithm>
#include <boost/random/chi_squared_distribution.hpp>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_01.hpp>
#include <cmath>

namespace dyestead {
namespace {

using Engine = boost::random::mt19937;

constexpr std::uint32_t kSeed = 1;

// Which of the points the seasons lie apart by; what is common to all vats of one, and what is each vat's own.
struct Parts {
    double common = 0;
    double own = 0;
};

// The chance that the next one fails too, the chance itself unknown: Jeffreys' beta and the counts so far. Counting
// each one drawn makes the whole season beta-binomial (Polya's urn).
struct Counts {
    int failed = 0;
    int all = 0;
    double next() const { return (failed + 0.5) / (all + 1.0); }
    void add(bool one_failed) {
        failed += one_failed ? 1 : 0;
        ++all;
    }
};

// To seven digits, in half the time: draws know far fewer.
double exp_of(double log) {
    return std::exp(static_cast<float>(log));
}

class Drawing {
public:
    Drawing(const DoubtInput& input, const VatSpread& spread, int vats)
        : input_{input}, spread_{spread}, vats_{vats}, chi_squared_{spread.vats - 1.0} {
        int failed = 0;
        for (const VatPoint& vat : input.vats) failed += vat.grams > 0 ? 0 : 1;
        failing_ = {failed, static_cast<int>(input.vats.size())};
        losing_ = {input.plantings_lost, input.plantings};
        // The mean itself is known to 1/n of the variance, alike for all vats to come.
        parts_ = {std::sqrt(spread.season_share + 1.0 / spread.vats), std::sqrt(1 - spread.season_share)};
    }

    Season next() {
        Season season;
        season.crop_lost = input_.crop_can_fail && unit_(engine_) < losing_.next();
        Counts failing = failing_;
        const double degrees = spread_.vats - 1.0;
        const double widened = std::sqrt(degrees / chi_squared_(engine_));
        const Summer summer = next_summer(widened);
        double grams = 0;
        double shade = 0;
        double time = 0;
        int gave = 0;
        for (int vat = 0; vat < vats_; ++vat) {
            const bool failed = unit_(engine_) < failing.next();
            failing.add(failed);
            const Spreads logs = logs_at(summer, normals());
            time += exp_of(logs[1]);
            if (failed) continue;
            ++gave;
            const double yield = exp_of(logs[0]);
            grams += yield;
            shade += yield * exp_of(logs[2]);
        }
        season.failed_vats = vats_ - gave;
        season.time_factor = time / vats_;
        season.yield = gave > 0 ? grams / gave : 0;
        season.strength = grams > 0 ? shade / grams : std::exp(spread_.mean[2]);
        return season;
    }

private:
    Spreads normals() { return {normal_(engine_), normal_(engine_), normal_(engine_)}; }

    // What all vats of a summer have together, and how wide that summer's vats spread.
    struct Summer {
        Spreads common{};
        std::array<Spreads, kSpreads> root{};
    };

    Summer next_summer(double widened) {
        Summer summer{normals(), spread_.root};
        for (double& each : summer.common) each *= parts_.common;
        for (Spreads& row : summer.root)
            for (double& each : row) each *= widened;
        return summer;
    }

    Spreads logs_at(const Summer& summer, const Spreads& own) const {
        Spreads apart{};
        for (std::size_t b = 0; b < kSpreads; ++b) apart[b] = summer.common[b] + parts_.own * own[b];
        Spreads logs = spread_.mean;
        for (std::size_t a = 0; a < kSpreads; ++a)
            for (std::size_t b = 0; b <= a; ++b) logs[a] += summer.root[a][b] * apart[b];
        return logs;
    }

    const DoubtInput& input_;
    const VatSpread& spread_;
    int vats_;
    Engine engine_{kSeed};
    boost::random::normal_distribution<double> normal_;
    boost::random::uniform_01<double> unit_;
    boost::random::chi_squared_distribution<double> chi_squared_;
    Counts failing_;
    Counts losing_;
    Parts parts_;
};

}  // namespace

SeasonSums season_sums(const DoubtInput& input, int vats, const Season& season) {
    const Model& m = input.model;
    const double kilos = vats * m.kg_per_vat;
    // What lost plantings took is drawn, not spread over the rest.
    const double garden_cash =
        input.crop_can_fail ? m.garden_cash_per_kg - input.garden_cash_of_lost : m.garden_cash_per_kg;
    const double garden_minutes =
        input.crop_can_fail ? m.garden_minutes_per_kg - input.garden_minutes_of_lost : m.garden_minutes_per_kg;
    SeasonSums sums;
    sums.cash = garden_cash * kilos;
    sums.minutes = garden_minutes * kilos;
    if (!season.crop_lost) {
        sums.cash += vats * m.vat_cash_fixed + kilos * m.vat_cash_per_kg;
        sums.minutes += vats * m.minutes_per_vat() * season.time_factor;
        const double grams = season.yield * m.kg_per_vat * (vats - season.failed_vats);
        sums.bars = grams * season.strength / m.dose;
    }
    const double kept = m.kept_share();
    sums.bought = {sums.bars * (kept * m.premium() + m.bought_cash() - m.home_cash_per_bar) - sums.cash,
                   (sums.minutes + sums.bars * (m.home_minutes_per_bar - m.bought_minutes_per_bar)) / 60};
    sums.plain = {sums.bars * (kept * (m.home_price - m.plain_price) - m.home_cash_per_bar) - sums.cash,
                  (sums.minutes + sums.bars * m.home_minutes_per_bar) / 60};
    return sums;
}

void draw_seasons(const DoubtInput& input, const VatSpread& spread, int vats, int draws,
                  const std::function<void(const DrawnSeason&)>& read) {
    Drawing drawing{input, spread, vats};
    for (int i = 0; i < draws; ++i) {
        const Season season = drawing.next();
        read({season, season_sums(input, vats, season)});
    }
}

std::vector<DrawnSeason> draw_seasons(const DoubtInput& input, const VatSpread& spread, int vats, int draws) {
    std::vector<DrawnSeason> drawn;
    drawn.reserve(static_cast<std::size_t>(draws));
    draw_seasons(input, spread, vats, draws, [&](const DrawnSeason& each) { drawn.push_back(each); });
    return drawn;
}

}  // namespace dyestead
