// seasons_read.h - what is read off the seasons that doubt.h has drawn? Each is noted as it comes, so that none is
// kept.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "domain/decisions/season_draws.h"

namespace dyestead {

inline constexpr std::array kDoubtOf{
    DoubtOf::yield, DoubtOf::vat_time, DoubtOf::strength, DoubtOf::failed_vats, DoubtOf::lost_crop};

// The input as it was in a season, more of it being better.
double input_of(const Season& season, DoubtOf of);

// What each season came to, on every measure that is shown.
class Measures {
public:
    explicit Measures(const DoubtInput& input) : input_{input} {
        if (input.cash_margin) before_colour_ = *input.cash_margin + input.model.home_cash();
    }

    double at_hurdle(const SeasonSums& sums) const { return sums.bought.full(input_.hurdle.value_or(0)); }
    double at_hurdle_no_premium(const SeasonSums& sums) const {
        return at_hurdle(sums) - sums.bars * input_.model.kept_share() * input_.model.premium();
    }
    std::optional<double> cash_margin(const SeasonSums& sums) const {
        if (sums.bars <= 0) return std::nullopt;
        return before_colour_ - sums.cash / sums.bars;
    }
    // The hours of the bar without colour are the same every season: only those of the colour differ.
    std::optional<double> full_margin(const SeasonSums& sums, double full_margin_usual) const {
        if (sums.bars <= 0) return std::nullopt;
        const double before = full_margin_usual + input_.model.home_full();
        return before - (sums.cash + input_.model.target_per_minute() * sums.minutes) / sums.bars;
    }
    std::optional<double> earned(const SeasonSums& sums) const {
        if (sums.bought.hours <= 0) return std::nullopt;
        return sums.bought.cash / sums.bought.hours;
    }

private:
    const DoubtInput& input_;
    double before_colour_ = 0;
};

// All that is asked of the seasons drawn, noted of each as it comes.
class SeasonsRead {
public:
    SeasonsRead(const DoubtInput& input, int draws);
    void note(const DrawnSeason& drawn);

    // In how much of them home came out ahead.
    double beats_bought_cash() const { return share(bought_cash_); }
    double beats_plain_cash() const { return share(plain_cash_); }
    double beats_bought() const { return share(bought_); }
    double beats_plain() const { return share(plain_); }

    // Of the seasons of which it can be said, as far as it is asked.
    std::vector<double> cash_margin;
    std::vector<double> full_margin;
    std::vector<double> earned;
    std::vector<double> at_hurdle;
    std::vector<double> at_hurdle_no_premium;
    std::array<std::vector<double>, kDoubtOf.size()> inputs;  // in the order of kDoubtOf

private:
    double share(int seasons) const { return static_cast<double>(seasons) / draws_; }

    const DoubtInput& input_;
    Measures measures_;
    int draws_;
    int bought_cash_ = 0;
    int plain_cash_ = 0;
    int bought_ = 0;
    int plain_ = 0;
};

}  // namespace dyestead
