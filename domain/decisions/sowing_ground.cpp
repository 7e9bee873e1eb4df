#include "domain/decisions/sowing_ground.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "domain/decisions/contribution.h"
#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

constexpr Days kHalfAYear{182};
constexpr int kLongestSummer = 1'000;  // days; what is typed beyond it is no annual's

// From sowing to the first cut of an annual.
std::optional<Days> days_growing(const Plant& plant) {
    if (!plant.days_to_harvest || plant.years_to_first > 0) return std::nullopt;
    return Days{std::clamp(*plant.days_to_harvest, 0, kLongestSummer)};
}

Day in_year(int year, double days_after_new_year) {
    return Day{day_of(year, 1, 1)} + Days{std::lround(days_after_new_year)};
}

// The same day of the year, on or after a day.
Day next_after(Day from, Day pattern) {
    const std::chrono::year_month_day ymd{pattern};
    const auto in = [&](int year) {
        const std::chrono::year_month_day that{std::chrono::year{year}, ymd.month(), ymd.day()};
        return that.ok() ? Day{that} : day_of(year, 3, 1);  // the 29th of February
    };
    const Day this_year = in(year_of(from));
    return this_year >= from ? this_year : in(year_of(from) + 1);
}

std::optional<double> mean(const std::vector<double>& all) {
    if (all.empty()) return std::nullopt;
    double sum = 0;
    for (const double each : all) sum += each;
    return sum / static_cast<double>(all.size());
}

double after_new_year(Day day, int year) {
    return static_cast<double>((day - Day{day_of(year, 1, 1)}).count());
}

// Where the year of a plant's cuts lies, by days after new year.
struct Cuts {
    std::optional<double> first;           // as usual
    std::optional<double> earliest_close;  // the last cut, of the year in which it came soonest
};

Cuts cuts(const std::vector<HarvestSeason>& seasons) {
    std::vector<double> first;
    Cuts result;
    for (const HarvestSeason& season : seasons) {
        if (!season.first_cut) continue;
        first.push_back(after_new_year(*season.first_cut, season.year));
        const double last = after_new_year(*season.last_cut, season.year);
        result.earliest_close = std::min(result.earliest_close.value_or(last), last);
    }
    result.first = mean(first);
    return result;
}

// When the first powder of a season is dry, by days after new year.
std::optional<double> first_powder(const std::vector<FinishedVat>& vats) {
    std::map<int, double> first;
    for (const FinishedVat& vat : vats) {
        if (vat.failed()) continue;
        const double dried = after_new_year(vat.dried, vat.season);
        const auto [at, is_new] = first.emplace(vat.season, dried);
        if (!is_new) at->second = std::min(at->second, dried);
    }
    std::vector<double> days;
    for (const auto& [season, day] : first) days.push_back(day);
    return mean(days);
}

// The last day a planting is likely to stand.
Day stands_until(const Records& records, const Plant& plant, const Planting& planting) {
    const Day today = records.ledger.as_of;
    const Day close = day_of(last_crop_year(plant, planting), 12, 31);
    if (plant.years_to_first <= 0) return close;
    const auto first = cuts(harvest_seasons(records, plant)).first;
    const Day lifted = first ? in_year(last_crop_year(plant, planting), *first) : close;
    return lifted >= today ? lifted : (first ? next_after(today, lifted) : day_of(year_of(today), 12, 31));
}

// An annual that no record tells the day of is sown when the last frost is usually over; one that must be cut before
// the first frost has its days to the harvest until then.
void frosts(const Records& records, const Plant& plant, SowingDays& days) {
    if (plant.years_to_first > 0) return;
    const Day today = records.ledger.as_of;
    const SowingRule rule = sowing_rule_in_force(records.shop, today);
    if (rule.last_frost && !days.sow_by) {
        days.sow_by = next_after(today, *rule.last_frost);
        days.from = SowDayFrom::last_frost;
    }
    if (!days.sow_by) return;
    // Of the frosts of the summer it grows in.
    if (rule.last_frost) days.last_frost = next_after(*days.sow_by - kHalfAYear, *rule.last_frost);
    const auto growing = days_growing(plant);
    if (!rule.first_frost || !growing) return;
    days.first_frost = next_after(*days.sow_by, *rule.first_frost);
    const Day last = *days.first_frost - *growing;
    if (last < *days.sow_by || (days.last_chance && *days.last_chance <= last)) return;
    days.last_chance = last;
    days.frost_closes = true;
}

}  // namespace

SowingDays sowing_days(const Records& records, const Plant& plant, const std::vector<FinishedVat>& vats,
                       std::optional<int> cure_days) {
    const Day today = records.ledger.as_of;
    const Cuts cut = cuts(harvest_seasons(records, plant));
    const Planting* last = last_sown(records, plant.key);
    SowingDays days;
    const auto growing = days_growing(plant);
    if (growing && cut.first) {
        int year = year_of(today);
        while (in_year(year, *cut.first) - *growing < today) ++year;
        days.sow_by = in_year(year, *cut.first) - *growing;
        days.from = SowDayFrom::usual_cut;
        const Day close = in_year(year, *cut.earliest_close) - *growing;
        if (close > *days.sow_by) days.last_chance = close;
    } else if (last != nullptr) {
        days.sow_by = next_after(today, last->sown);
        days.from = SowDayFrom::last_sown;
    }
    frosts(records, plant, days);
    if (days.from == SowDayFrom::last_frost && growing) days.first_cut = *days.sow_by + *growing;
    if (!days.sow_by || !cut.first) return days;
    // What is sown after the cuts of a year is cut in the next.
    int year = year_of(*days.sow_by) + std::max(plant.years_to_first, 0);
    if (in_year(year, *cut.first) < *days.sow_by) ++year;
    days.first_cut = in_year(year, *cut.first);
    const auto dry = first_powder(vats);
    if (!dry) return days;
    days.powder_dry = std::max(in_year(year, *dry), *days.first_cut);
    if (cure_days) days.bars_cured = *days.powder_dry + Days{std::max(*cure_days, 0)};
    return days;
}

StandingHarvest standing_harvest(const Records& records, const Plant& plant, const std::vector<FinishedVat>& vats) {
    const Day today = records.ledger.as_of;
    const auto first = cuts(harvest_seasons(records, plant)).first;
    StandingHarvest standing;
    standing.year = year_of(first ? next_after(today, in_year(year_of(today), *first)) : today);
    if (const auto dry = first_powder(vats)) standing.powder_dry = in_year(standing.year, *dry);
    for (const Planting& planting : records.shop.all<Planting>()) {
        if (planting.plant != plant.key || planting.sown > today) continue;
        if (ended_by(records.shop, planting, today)) continue;
        const int ripe = year_of(planting.sown) + std::max(plant.years_to_first, 0);
        if (ripe > standing.year || (plant.years_to_first <= 0 && ripe < standing.year)) continue;
        standing.m2 += ground(records.shop, planting);
    }
    return standing;
}

double bed_ground(const Shop& shop) {
    double all = 0;
    for (const Bed& bed : shop.all<Bed>()) all += square_metres(bed.area);
    return all;
}

double free_ground(const Records& records, Day day) {
    double free = bed_ground(records.shop);
    for (const Planting& planting : records.shop.all<Planting>()) {
        const Plant* plant = records.shop.find(planting.plant);
        if (plant == nullptr || planting.sown > records.ledger.as_of) continue;
        if (ended_by(records.shop, planting, records.ledger.as_of)) continue;
        if (stands_until(records, *plant, planting) >= day) free -= ground(records.shop, planting);
    }
    return std::max(0.0, free);
}

void share_ground(Sowing& sowing) {
    // Beds fill in the order of sowing, and what is free early is free later.
    double wanted = 0;
    for (const ColourSowing& each : sowing.colours) {
        if (!each.area.usual) continue;
        wanted += *each.area.usual;
        sowing.free_m2 = std::max(sowing.free_m2, each.free_m2);
        if (wanted > each.free_m2 + 1e-9) sowing.too_small = true;
    }
    sowing.wanted_m2 = wanted;
    if (!sowing.too_small) return;
    std::vector<ScarceUse> uses;
    for (const ColourSowing& each : sowing.colours)
        uses.push_back({each.brings_per_m2.value_or(0), 1, std::min(each.area.usual.value_or(0), each.free_m2)});
    const std::vector<double> given = best_use(uses, sowing.free_m2);
    for (std::size_t i = 0; i < given.size(); ++i)
        if (sowing.colours[i].area.usual) sowing.colours[i].ground_given = given[i];
}

}  // namespace dyestead
