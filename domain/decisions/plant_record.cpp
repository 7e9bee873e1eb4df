#include "domain/decisions/plant_record.h"

#include <algorithm>
#include <map>
#include <set>

#include "domain/facts/shop.h"

namespace dyestead {
namespace {

struct Gathering {
    Day day{};
    double kg = 0;
};

// What was cut of a planting up to the day of the books.
std::vector<Gathering> cuts_of(const Records& records, Key<Planting> planting) {
    std::vector<Gathering> cuts;
    for (const Harvest& harvest : records.shop.all<Harvest>()) {
        if (harvest.planting != planting || harvest.date > records.ledger.as_of) continue;
        const Lot* lot = records.shop.find(harvest.lot);
        const Material* material = lot == nullptr ? nullptr : records.shop.find(lot->material);
        const auto held = material == nullptr ? std::nullopt : as_held(*material, harvest.amount);
        cuts.push_back({harvest.date, held ? grams(*material, held->in_base()).value_or(0) / 1000 : 0});
    }
    return cuts;
}

}  // namespace

double square_metres(const Amount& amount) {
    if (amount.quantity.kind() != Kind::area) return 0;
    return std::max(0.0, static_cast<double>(amount.quantity.in_base()) / 1e4);
}

double ground(const Shop& shop, const Planting& planting) {
    if (planting.area) return square_metres(*planting.area);
    const Bed* bed = shop.find(planting.bed);
    return bed == nullptr ? 0 : square_metres(bed->area);
}

bool ended_by(const Shop& shop, const Planting& planting, Day day) {
    return std::ranges::any_of(shop.all<PlantingEnd>(),
                               [&](const PlantingEnd& end) { return end.planting == planting.key && end.date <= day; });
}

int last_crop_year(const Plant& plant, const Planting& planting) {
    return year_of(planting.sown) + std::max(plant.years_to_first, 0) +
           (plant.years_to_first > 0 ? std::max(plant.crops, 1) - 1 : 0);
}

std::vector<HarvestSeason> harvest_seasons(const Records& records, const Plant& plant) {
    const Day today = records.ledger.as_of;
    std::map<int, HarvestSeason> seasons;
    bool still_open = false;  // this year
    for (const Planting& planting : records.shop.all<Planting>()) {
        if (planting.plant != plant.key || planting.sown > today) continue;
        const bool ended = ended_by(records.shop, planting, today);
        std::map<int, std::vector<Gathering>> by_year;
        for (const Gathering& cut : cuts_of(records, planting.key)) by_year[year_of(cut.day)].push_back(cut);
        const int due = year_of(planting.sown) + std::max(plant.years_to_first, 0);
        if (by_year.empty() && (ended || (plant.years_to_first == 0 && due < year_of(today)))) by_year[due] = {};
        if (!ended && due <= year_of(today)) still_open = true;
        for (const auto& [year, cuts] : by_year) {
            HarvestSeason& season = seasons[year];
            season.year = year;
            season.m2 += ground(records.shop, planting);
            for (const Gathering& cut : cuts) {
                season.first_cut = std::min(season.first_cut.value_or(cut.day), cut.day);
                season.last_cut = std::max(season.last_cut.value_or(cut.day), cut.day);
                season.kg += cut.kg;
            }
        }
    }
    std::vector<HarvestSeason> result;
    for (auto& [year, season] : seasons) {
        if (season.m2 <= 0 || (year == year_of(today) && still_open)) continue;
        result.push_back(season);
    }
    return result;
}

const Planting* last_sown(const Records& records, Key<Plant> plant) {
    const Planting* last = nullptr;
    for (const Planting& planting : records.shop.all<Planting>())
        if (planting.plant == plant && planting.sown <= records.ledger.as_of &&
            (last == nullptr || planting.sown >= last->sown))
            last = &planting;
    return last;
}

SeedUsed seed_used(const Records& records, Key<Plant> plant) {
    struct Sown {
        Day last{};
        double base = 0;
        double m2 = 0;
        std::set<Key<Planting>> where;  // sown again: more seed, the same ground
    };
    std::map<Key<Material>, Sown> by_seed;
    for (const PlantingUse& use : records.shop.all<PlantingUse>()) {
        const Planting* planting = records.shop.find(use.head);
        const Material* material = records.shop.find(use.material);
        if (planting == nullptr || material == nullptr || material->kind != MaterialKind::seed) continue;
        if (planting->plant != plant || planting->sown > records.ledger.as_of) continue;
        const auto held = as_held(*material, use.amount);
        if (!held) continue;
        Sown& sown = by_seed[material->key];
        sown.last = std::max(sown.last, planting->sown);
        sown.base += static_cast<double>(held->in_base());
        if (sown.where.insert(planting->key).second) sown.m2 += ground(records.shop, *planting);
    }
    if (by_seed.empty()) return {};
    const auto& [seed, sown] =
        *std::ranges::max_element(by_seed, {}, [](const auto& each) { return each.second.last; });
    return {seed, sown.m2 > 0 && sown.base > 0 ? std::optional{sown.base / sown.m2} : std::nullopt};
}

}  // namespace dyestead
