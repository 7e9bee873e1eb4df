#include "domain/decisions/doubt.h"

#include <algorithm>
#include <array>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <functional>
#include <map>
#include <set>

#include "domain/decisions/band_of.h"
#include "domain/decisions/forecast.h"
#include "domain/decisions/seasons_read.h"

namespace dyestead {
namespace {

constexpr int kEnoughForChance = 4;

// Of the seasons of which it can be said; empty where there is none.
std::optional<Band> band(const std::vector<double>& values) {
    return values.empty() ? std::nullopt : std::optional{band_of(values)};
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
    Weighing(const DoubtInput& input, const SeasonsRead& drawn, int vats)
        : input_{input}, measures_{input}, vats_{vats} {
        for (std::size_t i = 0; i < kDoubtOf.size(); ++i) {
            forecasts_[i] = perfect_forecast(drawn.inputs[i], drawn.at_hurdle);
            bands_[i] = band_of(drawn.inputs[i]);
            usual_ = with(usual_, kDoubtOf[i], bands_[i].usual);
        }
    }

    std::vector<Matter> matters() const {
        std::vector<Matter> result;
        for (std::size_t i = 0; i < kDoubtOf.size(); ++i) {
            const DoubtOf of = kDoubtOf[i];
            const Band& at = bands_[i];
            Matter matter{
                of, {value_at(of, at.bad), value_at(of, at.usual), value_at(of, at.good)}, forecasts_[i], one_more(of)};
            // Where growing loses, a lost crop loses less: true, and no help to anybody.
            if (matter.season.good > matter.season.bad || matter.perfect_forecast > 0) result.push_back(matter);
        }
        std::ranges::stable_sort(result, std::greater{}, &Matter::swing);
        return result;
    }

private:
    double value_at(DoubtOf of, double value) const {
        return measures_.at_hurdle(season_sums(input_, vats_, with(usual_, of, value)));
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
    int vats_;
    std::array<Band, kDoubtOf.size()> bands_{};
    std::array<double, kDoubtOf.size()> forecasts_{};
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
    SeasonsRead drawn{input, draws};
    draw_seasons(input, spread, result.season_vats, draws, [&](const DrawnSeason& each) { drawn.note(each); });
    if (input.hurdle) {
        result.matters = Weighing{input, drawn, result.season_vats}.matters();
        result.at_hurdle = band(drawn.at_hurdle);
        result.at_hurdle_no_premium = band(drawn.at_hurdle_no_premium);
    }
    result.cash_margin = band(drawn.cash_margin);
    result.full_margin = band(drawn.full_margin);
    result.earned_per_hour = band(drawn.earned);
    result.one_more_season = width(spread.vats + result.season_vats) / width(spread.vats);
    if (result.kind != DoubtKind::chance) return;
    result.home_beats_bought_cash = drawn.beats_bought_cash();
    if (input.plain_price_known) result.home_beats_plain_cash = drawn.beats_plain_cash();
    if (!input.target) return;
    result.home_beats_bought = drawn.beats_bought();
    if (input.plain_price_known) result.home_beats_plain = drawn.beats_plain();
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
