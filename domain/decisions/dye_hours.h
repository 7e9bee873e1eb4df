// dye_hours.h - where did the hours for a colour go, step by step, and which step is worth improving first?
//
// Over the vats finished in a window: each step of theirs by name, as noted or as the method shares what was told, the
// drying, and what their harvest had taken in the garden. Steps of one name are one step, however often they were done.
#pragma once

#include <string>
#include <vector>

#include "domain/decisions/verdict.h"

namespace dyestead {

enum class HoursAt : std::uint8_t { garden, step, rest_of_vat };

struct StepHours {
    HoursAt at{};
    std::string what;          // the step's own words; blank for the others
    double minutes = 0;        // in the window
    double share = 0;          // of all dye minutes
    double times = 0;          // done at one vat, on average
    bool from_method = false;  // some of it was shared by the method
};

// The longest first. Empty where no time is on record.
std::vector<StepHours> dye_hours(const Shop& shop, const Verdict& verdict);

}  // namespace dyestead
