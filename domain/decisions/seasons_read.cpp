#include "domain/decisions/seasons_read.h"

namespace dyestead {

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

SeasonsRead::SeasonsRead(const DoubtInput& input, int draws) : input_{input}, measures_{input}, draws_{draws} {
    const auto room = static_cast<std::size_t>(draws);
    earned.reserve(room);
    if (input.cash_margin) cash_margin.reserve(room);
    if (input.cash_margin && input.full_margin) full_margin.reserve(room);
    if (!input.hurdle) return;
    at_hurdle.reserve(room);
    at_hurdle_no_premium.reserve(room);
    for (std::vector<double>& each : inputs) each.reserve(room);
}

void SeasonsRead::note(const DrawnSeason& drawn) {
    const SeasonSums& sums = drawn.sums;
    const auto note_in = [](std::vector<double>& values, std::optional<double> value) {
        if (value) values.push_back(*value);
    };
    note_in(earned, measures_.earned(sums));
    if (input_.cash_margin) note_in(cash_margin, measures_.cash_margin(sums));
    if (input_.cash_margin && input_.full_margin)
        note_in(full_margin, measures_.full_margin(sums, *input_.full_margin));
    if (input_.hurdle) {
        at_hurdle.push_back(measures_.at_hurdle(sums));
        at_hurdle_no_premium.push_back(measures_.at_hurdle_no_premium(sums));
        for (std::size_t i = 0; i < kDoubtOf.size(); ++i) inputs[i].push_back(input_of(drawn.season, kDoubtOf[i]));
    }
    const double hour = input_.target.value_or(0);
    bought_cash_ += sums.bought.cash > 0 ? 1 : 0;
    plain_cash_ += sums.plain.cash > 0 ? 1 : 0;
    bought_ += sums.bought.full(hour) > 0 ? 1 : 0;
    plain_ += sums.plain.full(hour) > 0 ? 1 : 0;
}

}  // namespace dyestead
