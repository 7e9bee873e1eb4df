#include "domain/decisions/steps_as_done.h"

#include <algorithm>

#include "domain/facts/lines_of.h"
#include "domain/facts/material_amount.h"

namespace dyestead {
namespace {

Minutes time_of(const std::optional<Span>& span) {
    return span ? span->time : Minutes{};
}

// Milligrams.
std::int64_t harvest_in(const Shop& shop, const Vat& vat) {
    Wide sum = 0;
    for (const VatUse& use : shop.all<VatUse>()) {
        const Material* material = shop.find(use.material);
        if (use.head != vat.key || material == nullptr || material->kind != MaterialKind::harvest) continue;
        const auto held = as_held(*material, use.amount);
        if (held && held->kind() == Kind::mass) sum += held->in_base();
    }
    return narrow(std::min<Wide>(sum, kLargestStatedBase));
}

// Shares out `whole` by weight, equally where nothing weighs.
void share(Minutes whole, std::vector<Wide> weights, std::vector<StepDone>& steps, Minutes StepDone::*part) {
    Wide left = 0;
    for (const Wide weight : weights) left += weight;
    if (left == 0) {
        std::ranges::fill(weights, 1);
        left = static_cast<Wide>(weights.size());
    }
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const Minutes time =
            left == 0 ? Minutes{} : Minutes::millionths(narrow(Wide{whole.in_millionths()} * weights[i] / left));
        steps[i].*part = time;
        whole -= time;
        left -= weights[i];
    }
}

std::vector<StepDone> as_told(const Shop& shop, const Vat& vat) {
    std::vector<StepDone> steps;
    if (!vat.method) return steps;
    constexpr std::int64_t kKilogram = 1'000'000;
    const std::int64_t harvest = harvest_in(shop, vat);
    std::vector<Wide> hands_on;
    std::vector<Wide> waiting;
    const LinesOf<MethodStep> lines{shop};
    for (const MethodStep* step : lines(*vat.method)) {
        steps.push_back({step->position, step->what, {}, {}, true});
        const Wide per_kg = Wide{time_of(step->hands_on_per_kg).in_millionths()} * harvest / kKilogram;
        const bool watched = step->watch == Watch::attended;
        const int times = times_done(vat, *step);
        hands_on.push_back((per_kg + time_of(step->hands_on).in_millionths()) * times);
        waiting.push_back(watched ? Wide{time_of(step->waiting).in_millionths()} * times : 0);
    }
    share(time_of(vat.hands_on), hands_on, steps, &StepDone::hands_on);
    share(time_of(vat.waiting), waiting, steps, &StepDone::waiting);
    return steps;
}

}  // namespace

int times_done(const Vat& vat, const MethodStep& step) {
    return std::max(0, step.times > 1 ? vat.washes.value_or(step.times) : step.times);
}

std::vector<StepDone> steps_as_done(const Shop& shop, const Vat& vat) {
    std::vector<StepDone> noted;
    const LinesOf<VatStep> lines{shop};
    for (const VatStep* step : lines(vat.key))
        if (step->hands_on || step->waiting)
            noted.push_back({step->position, step->what, time_of(step->hands_on), time_of(step->waiting), false});
    return noted.empty() ? as_told(shop, vat) : noted;
}

}  // namespace dyestead
