// random_shop.h - a shop made from a list of small random acts, for property tests. Each act is one
// fact; taking an act away leaves a valid shop, so a failing shop shrinks to a small one.
#pragma once

#include <cstdint>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead::test {

struct Act {
    int what = 0;  // which fact
    int day = 0;   // days since kFirstDay
    int a = 0;     // whatever the fact makes of them; 0 to 999
    int b = 0;
    int c = 0;
};

inline constexpr Day kFirstDay = day_of(2025, 3, 1);
inline constexpr int kFirstCupboardAct = 29;  // random_cupboard.h
inline constexpr int kCupboardActs = 4;
inline constexpr int kCostRuleAct = kFirstCupboardAct + 3;
inline constexpr int kFirstGardenAct = kFirstCupboardAct + kCupboardActs;  // random_garden.h
inline constexpr int kGardenActs = 6;
inline constexpr int kActs = kFirstGardenAct + kGardenActs;  // kinds of act
inline constexpr int kDays = 400;                            // over which they are spread

Shop random_shop(const std::vector<Act>& acts);

// The shop without all facts (and lines of facts) dated after a day.
Shop without_later(const Shop& shop, Day day);

}  // namespace dyestead::test
