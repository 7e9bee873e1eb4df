// sowing_ground.h - on which days is a plant sown, cut and worked, what of it stands already, and what ground is free?
// The parts of sowing.h that are about days and beds.
#pragma once

#include "domain/decisions/pigment_pool.h"
#include "domain/decisions/plant_record.h"
#include "domain/decisions/sowing.h"

namespace dyestead {

// `cure_days`: of the soap the bars are poured with.
SowingDays sowing_days(const Records& records, const Plant& plant, const std::vector<FinishedVat>& vats,
                       std::optional<int> cure_days);

// Year, ground and when its powder is dry; its bars are the caller's to reckon.
StandingHarvest standing_harvest(const Records& records, const Plant& plant, const std::vector<FinishedVat>& vats);

// Of all beds on record.
double bed_ground(const Shop& shop);
// Less what still stands on that day.
double free_ground(const Records& records, Day day);

// Fills in ground_given where all beds are too small for what is wanted in usual years: first to what brings most for
// a square metre and season (contribution.h); what brings nothing gets none.
void share_ground(Sowing& sowing);

}  // namespace dyestead
