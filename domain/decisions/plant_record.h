// plant_record.h - how did a plant do in one's own beds: what came of a square metre, when was it sown and cut, how
// much seed went in, and until when does what stands now keep its ground?
#pragma once

#include <optional>
#include <vector>

#include "domain/decisions/records.h"

namespace dyestead {

// All harvest of a plant in one year and the ground it was due on, failed plantings in.
struct HarvestSeason {
    int year = 0;
    double kg = 0;
    double m2 = 0;
    std::optional<Day> first_cut;  // empty: nothing was cut
    std::optional<Day> last_cut;
    double per_m2() const { return m2 > 0 ? kg / m2 : 0; }
};

// Oldest first. The year that runs is left out while a planting due in it still stands.
std::vector<HarvestSeason> harvest_seasons(const Records& records, const Plant& plant);

// 0 for what is no area.
double square_metres(const Amount& amount);

// The ground a planting was sown on, parts lost later in: its own, else its whole bed.
double ground(const Shop& shop, const Planting& planting);

bool ended_by(const Shop& shop, const Planting& planting, Day day);

// The year of its last crop: an annual's own.
int last_crop_year(const Plant& plant, const Planting& planting);

const Planting* last_sown(const Records& records, Key<Plant> plant);

struct SeedUsed {
    std::optional<Key<Material>> seed;  // what was sown last
    std::optional<double> per_m2;       // base units of it, over all sowings of the plant with it
};
SeedUsed seed_used(const Records& records, Key<Plant> plant);

}  // namespace dyestead
