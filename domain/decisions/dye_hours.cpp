#include "domain/decisions/dye_hours.h"

#include <algorithm>
#include <functional>
#include <map>

#include "domain/decisions/records.h"
#include "domain/decisions/steps_as_done.h"

namespace dyestead {

std::vector<StepHours> dye_hours(const Shop& shop, const Verdict& verdict) {
    const double all = verdict.figures.season.dye_hours.value_or(0) * 60;
    if (all <= 0) return {};
    std::map<std::string, StepHours> steps;
    double at_vats = 0;
    double by_steps = 0;
    for (const VatRow& row : verdict.vats) {
        const Vat* vat = shop.find(row.vat);
        if (vat == nullptr) continue;
        at_vats += row.hours * 60;
        for (const StepDone& done : steps_as_done(shop, *vat)) {
            const double minutes = number(done.hands_on);
            if (minutes <= 0) continue;
            StepHours& step = steps[done.what];
            step.at = HoursAt::step;
            step.what = done.what;
            step.minutes += minutes;
            step.times += 1.0 / static_cast<double>(verdict.vats.size());
            step.from_method = step.from_method || done.from_method;
            by_steps += minutes;
        }
    }
    std::vector<StepHours> result;
    for (auto& [what, step] : steps) result.push_back(std::move(step));
    // Waiting that counts, drying, sittings: at the vat, but at no step of its own.
    if (at_vats - by_steps > 0.5) result.push_back({HoursAt::rest_of_vat, {}, at_vats - by_steps, 0, 0, false});
    if (all - at_vats > 0.5) result.push_back({HoursAt::garden, {}, all - at_vats, 0, 0, false});
    for (StepHours& each : result) each.share = each.minutes / all;
    std::ranges::stable_sort(result, std::greater{}, &StepHours::minutes);
    return result;
}

}  // namespace dyestead
