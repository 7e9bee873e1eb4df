#include "domain/decisions/plants_compared.h"

#include <algorithm>
#include <map>

#include "domain/decisions/pigment_pool.h"
#include "domain/decisions/plant_record.h"

namespace dyestead {
namespace {

double bed_and_seasons(const Records& records, Key<Colour> colour, Window window) {
    std::map<Key<Planting>, Day> ended;
    for (const PlantingEnd& end : records.shop.all<PlantingEnd>()) {
        const auto [at, is_new] = ended.emplace(end.planting, end.date);
        if (!is_new) at->second = std::min(at->second, end.date);
    }
    double sum = 0;
    for (const Planting& planting : records.shop.all<Planting>()) {
        if (!is_of_colour(records.shop, planting, colour)) continue;
        const auto end = ended.find(planting.key);
        const Day first = std::max(planting.sown, window.first);
        const Day last = end == ended.end() ? window.last : std::min(end->second, window.last);
        if (first > last) continue;
        sum += ground(records.shop, planting) * (year_of(last) - year_of(first) + 1);
    }
    return sum;
}

PlantCompared compared(const Shop& shop, const Ledger& ledger, const Verdict& verdict) {
    const VerdictFigures& figures = verdict.figures;
    PlantCompared row;
    row.colour = verdict.colour;
    row.word = verdict.ruling.word;
    row.dye_hours = figures.season.dye_hours.value_or(0);
    row.square_metre_seasons = bed_and_seasons({shop, ledger}, verdict.colour, verdict.window);
    row.earned_per_hour = figures.extra_dye_hour.earned;
    row.season_cash = figures.season.cash_difference;
    if (row.season_cash && row.square_metre_seasons > 0)
        row.per_square_metre = *row.season_cash / row.square_metre_seasons;
    row.strength = figures.strength;
    const auto& gram = figures.pigment.full_cost_per_gram;
    if (gram) row.per_shade_gram = *gram / figures.strength;
    if (verdict.bought_price_per_gram && figures.model)
        row.bought_per_shade_gram = *verdict.bought_price_per_gram / figures.model->bought_strength;
    return row;
}

}  // namespace

std::vector<PlantCompared> plants_compared(const Shop& shop, const Ledger& ledger, int months) {
    std::vector<PlantCompared> rows;
    for (const Colour& colour : shop.all<Colour>()) {
        const Verdict answer = verdict(shop, ledger, colour.key, months, 0);
        if (answer.stands_on.vats_finished > 0) rows.push_back(compared(shop, ledger, answer));
    }
    std::ranges::stable_sort(rows, [](const PlantCompared& a, const PlantCompared& b) {
        if (!a.earned_per_hour || !b.earned_per_hour) return a.earned_per_hour.has_value() && !b.earned_per_hour;
        return *a.earned_per_hour > *b.earned_per_hour;
    });
    return rows;
}

}  // namespace dyestead
