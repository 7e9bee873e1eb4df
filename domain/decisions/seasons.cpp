#include "domain/decisions/seasons.h"

#include <algorithm>
#include <limits>
#include <map>

namespace dyestead {
namespace {

AtHurdle at_hurdle(const SeasonRow& season) {
    constexpr double kNothing = -std::numeric_limits<double>::infinity();
    return {season.full_difference_at_hurdle.value_or(kNothing),
            season.full_difference_at_hurdle_no_premium.value_or(kNothing)};
}

bool worse(const SeasonRow& a, const SeasonRow& b) {
    return at_hurdle(a).with_premium < at_hurdle(b).with_premium;
}

SeasonRow season(const Records& records, const Gathered& gathered, int year, const std::vector<FinishedVat>& vats,
                 double strength) {
    const PigmentPool pool = pigment_pool(records, gathered.colour->key, vats, calendar_year(year));
    SeasonRow row;
    row.year = year;
    row.vats = pool.vats;
    row.failed_vats = pool.failed;
    row.kg = pool.kg;
    row.grams = pool.grams();
    if (pool.kg > 0) row.g_per_kg = pool.grams() / pool.kg;
    row.strength = strength_of(records, *gathered.colour, vats).known();
    row.dye_hours = number(pool.all().hands_on) / 60;
    row.cash = number(pool.all().cash());
    if (pool.grams() > 0 && gathered.target) row.full_cost_per_gram = number(pool.all().full()) / pool.grams();
    const PigmentPool to_spend = gathered.stand ? still_to_spend(pool, *gathered.stand) : pool;
    const auto model = model_of(gathered, to_spend, row.strength.value_or(strength));
    const auto hurdle = gathered.hurdle();
    if (model && hurdle) {
        row.full_difference_at_hurdle = home_less_bought(*model).full(*hurdle);
        row.full_difference_at_hurdle_no_premium =
            *row.full_difference_at_hurdle - model->kept_share() * model->premium();
    }
    return row;
}

}  // namespace

std::vector<SeasonRow> seasons(const Records& records, const Gathered& gathered, const std::vector<FinishedVat>& vats,
                               double strength) {
    std::map<int, std::vector<FinishedVat>> by_year;
    for (const FinishedVat& vat : vats) by_year[vat.season].push_back(vat);
    std::vector<SeasonRow> rows;
    for (const auto& [year, of_year] : by_year) rows.push_back(season(records, gathered, year, of_year, strength));
    return rows;
}

AtHurdle worst(const std::vector<SeasonRow>& seasons) {
    return at_hurdle(*std::ranges::min_element(seasons, worse));
}

AtHurdle best(const std::vector<SeasonRow>& seasons) {
    return at_hurdle(*std::ranges::max_element(seasons, worse));
}

}  // namespace dyestead
