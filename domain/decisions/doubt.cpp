#include "domain/decisions/doubt.h"

#include <algorithm>
#include <array>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <functional>
#include <map>
#include <set>

#include "domain/decisions/season_draws.h"

namespace dyestead {
namespace {

constexpr int kEnoughForChance = 4;
constexpr double kBad = 0.1;
constexpr double kGood = 0.9;
// Draws a perfect forecast is worked out from, in so many groups of like seasons.
constexpr std::size_t kForForecast = 10'000;
constexpr std::size_t kGroups = 50;

// Each looks only through what the one before left above it.
Band bad_usual_good(std::vector<double>& values) {
    const auto place = [&](double share) {
        return values.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
    };
    const auto usual = place(0.5);
    std::nth_element(values.begin(), usual, values.end());
    const auto bad = place(kBad);
    std::nth_element(values.begin(), bad, usual);
    const auto good = place(kGood);
    std::nth_element(usual, good, values.end());
    return {*bad, *usual, *good};
}

// Of the seasons of which it can be said; empty where there is none.
template <class Of>
std::optional<Band> band(const std::vector<DrawnSeason>& drawn, Of of) {
    std::vector<double> values;
    values.reserve(drawn.size());
    for (const DrawnSeason& each : drawn)
        if (const std::optional<double> value = of(each.sums)) values.push_back(*value);
    if (values.empty()) return std::nullopt;
    return bad_usual_good(values);
}

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

template <class Ahead>
double chance(const std::vector<DrawnSeason>& drawn, Ahead ahead) {
    const auto count = std::ranges::count_if(drawn, [&](const DrawnSeason& each) { return ahead(each.sums); });
    return static_cast<double>(count) / static_cast<double>(drawn.size());
}

double input_of(const Season& season, DoubtOf of) {
    switch (of) {
        case DoubtOf::yield: return season.yield;
        case DoubtOf::vat_time: return -season.time_factor;
        case DoubtOf::strength: return season.strength;
        case DoubtOf::failed_vats: return -season.failed_vats;
        case DoubtOf::lost_crop: return season.crop_lost ? -1 : 0;
    }
    return 0;
}

Season with(Season season, DoubtOf of, double value) {
    switch (of) {
        case DoubtOf::yield: season.yield = value; break;
        case DoubtOf::vat_time: season.time_factor = -value; break;
        case DoubtOf::strength: season.strength = value; break;
        case DoubtOf::failed_vats: season.failed_vats = -value; break;
        case DoubtOf::lost_crop: season.crop_lost = value < 0; break;
    }
    return season;
}

// How wide the predictive draws are for each unit of spread, with so many records.
double width(int records) {
    const boost::math::students_t t{records - 1.0};
    return boost::math::quantile(t, kGood) * std::sqrt(1 + 1.0 / records);
}

// Of the number that fail among so many to come, known from so many counted (Jeffreys' prior): what one count more
// leaves of its standard deviation, on average. By the law of total variance, with m to come, S = counted + 1 and the
// chance p known so far: Var = m p (1 - p) (m + S)/(S + 1), of which one count takes off m2 p (1 - p)/(S + 1)2.
double one_more_count(int counted, int to_come) {
    const double known = counted + 1.0;
    return std::sqrt(1 - to_come / ((known + 1) * (to_come + known)));
}

class Weighing {
public:
    Weighing(const DoubtInput& input, const std::vector<DrawnSeason>& drawn, int vats)
        : input_{input}, measures_{input}, drawn_{drawn}, vats_{vats} {
        for (const DoubtOf of : kAll) {
            drawn_of_[of] = band_of(of);
            usual_ = with(usual_, of, drawn_of_[of].usual);
        }
    }

    std::vector<Matter> matters() const {
        std::vector<Matter> result;
        for (const DoubtOf of : kAll) {
            const Band& at = drawn_of_.at(of);
            Matter matter{of,
                          {value_at(of, at.bad), value_at(of, at.usual), value_at(of, at.good)},
                          perfect_forecast(of),
                          one_more(of)};
            // Where growing loses, a lost crop loses less: true, and no help to anybody.
            if (matter.season.good > matter.season.bad || matter.perfect_forecast > 0) result.push_back(matter);
        }
        std::ranges::stable_sort(result, std::greater{}, &Matter::swing);
        return result;
    }

private:
    static constexpr std::array kAll{
        DoubtOf::yield, DoubtOf::vat_time, DoubtOf::strength, DoubtOf::failed_vats, DoubtOf::lost_crop};

    Band band_of(DoubtOf of) const {
        std::vector<double> values;
        values.reserve(drawn_.size());
        for (const DrawnSeason& each : drawn_) values.push_back(input_of(each.season, of));
        return bad_usual_good(values);
    }

    double value_at(DoubtOf of, double value) const {
        return measures_.at_hurdle(season_sums(input_, vats_, with(usual_, of, value)));
    }

    // Seasons alike in this one thing are taken together: in each such group the better choice is the one that is
    // better on average over it.
    double perfect_forecast(DoubtOf of) const {
        const std::size_t count = std::min(drawn_.size(), kForForecast);
        std::vector<std::pair<double, double>> known;
        known.reserve(count);
        double all = 0;
        for (std::size_t i = 0; i < count; ++i) {
            const double value = measures_.at_hurdle(drawn_[i].sums);
            known.emplace_back(input_of(drawn_[i].season, of), value);
            all += value;
        }
        std::ranges::sort(known);
        double by_group = 0;
        for (std::size_t group = 0; group < kGroups; ++group) {
            double sum = 0;
            for (std::size_t i = group * count / kGroups; i < (group + 1) * count / kGroups; ++i)
                sum += known[i].second;
            by_group += std::max(0.0, sum);
        }
        return std::max(0.0, (by_group - std::max(0.0, all)) / static_cast<double>(count));
    }

    std::optional<double> one_more(DoubtOf of) const {
        int gave = 0;
        int tested = 0;
        for (const VatPoint& vat : input_.vats) {
            if (vat.grams <= 0 || vat.kg <= 0) continue;
            ++gave;
            tested += vat.strength ? 1 : 0;
        }
        switch (of) {
            case DoubtOf::yield:
            case DoubtOf::vat_time: return width(gave + 1) / width(gave);
            case DoubtOf::strength:
                // With fewer, the spread is another thing's.
                return tested < 2 ? std::nullopt : std::optional{width(tested + 1) / width(tested)};
            case DoubtOf::failed_vats: return one_more_count(static_cast<int>(input_.vats.size()), vats_);
            case DoubtOf::lost_crop: return one_more_count(input_.plantings, 1);
        }
        return std::nullopt;
    }

    const DoubtInput& input_;
    Measures measures_;
    const std::vector<DrawnSeason>& drawn_;
    int vats_;
    std::map<DoubtOf, Band> drawn_of_;
    Season usual_;
};

int vats_of_last_season(const DoubtInput& input) {
    std::map<int, int> vats;
    for (const VatPoint& vat : input.vats) ++vats[vat.season];
    return vats.empty() ? 0 : vats.rbegin()->second;
}

// Each vat on record as a season of nothing but such vats, failed ones among them.
Band extremes(const DoubtInput& input, int season_vats) {
    std::vector<double> values;
    const Measures measures{input};
    for (const VatPoint& vat : input.vats) {
        if (vat.kg <= 0) continue;
        Season season;
        season.failed_vats = vat.grams > 0 ? 0 : season_vats;
        if (vat.grams > 0) {
            const Spreads logs = logs_of(vat, input.model);
            season = {std::exp(logs[0]), std::exp(logs[1]), std::exp(logs[2]), 0, false};
        }
        values.push_back(measures.at_hurdle(season_sums(input, season_vats, season)));
    }
    std::ranges::sort(values);
    return {values.front(), values[values.size() / 2], values.back()};
}

void draw(const DoubtInput& input, int draws, Doubt& result) {
    const VatSpread spread = vat_spread(input);
    const auto drawn = draw_seasons(input, spread, result.season_vats, draws);
    const Measures measures{input};
    if (input.cash_margin) {
        result.cash_margin = band(drawn, [&](const SeasonSums& sums) { return measures.cash_margin(sums); });
        if (input.full_margin)
            result.full_margin =
                band(drawn, [&](const SeasonSums& sums) { return measures.full_margin(sums, *input.full_margin); });
    }
    result.earned_per_hour = band(drawn, [&](const SeasonSums& sums) { return measures.earned(sums); });
    if (input.hurdle) {
        result.at_hurdle = band(drawn, [&](const SeasonSums& sums) { return measures.at_hurdle(sums); });
        result.at_hurdle_no_premium =
            band(drawn, [&](const SeasonSums& sums) { return measures.at_hurdle_no_premium(sums); });
        result.matters = Weighing{input, drawn, result.season_vats}.matters();
    }
    result.one_more_season = width(spread.vats + result.season_vats) / width(spread.vats);
    if (result.kind != DoubtKind::chance) return;
    result.home_beats_bought_cash = chance(drawn, [](const SeasonSums& sums) { return sums.bought.cash > 0; });
    if (input.plain_price_known)
        result.home_beats_plain_cash = chance(drawn, [](const SeasonSums& sums) { return sums.plain.cash > 0; });
    if (!input.target) return;
    const double hour = *input.target;
    result.home_beats_bought = chance(drawn, [&](const SeasonSums& sums) { return sums.bought.full(hour) > 0; });
    if (input.plain_price_known)
        result.home_beats_plain = chance(drawn, [&](const SeasonSums& sums) { return sums.plain.full(hour) > 0; });
}

}  // namespace

Doubt doubt(const DoubtInput& input, int draws) {
    Doubt result;
    std::set<int> seasons;
    for (const VatPoint& vat : input.vats)
        if (vat.grams > 0 && vat.kg > 0) {
            ++result.vats;
            seasons.insert(vat.season);
        }
    result.seasons = static_cast<int>(seasons.size());
    result.season_vats = vats_of_last_season(input);
    if (result.vats < 2 || draws <= 0) return result;
    if (result.vats < kEnoughForChance) {
        result.kind = DoubtKind::extremes;
        if (input.hurdle) result.at_hurdle = extremes(input, result.season_vats);
        return result;
    }
    result.kind = result.seasons > 1 ? DoubtKind::chance : DoubtKind::one_season;
    draw(input, draws, result);
    return result;
}

}  // namespace dyestead
