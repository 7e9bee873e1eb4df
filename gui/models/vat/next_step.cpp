#include "gui/models/vat/next_step.h"

#include <algorithm>

#include "domain/decisions/method_bands.h"
#include "domain/decisions/steps_as_done.h"
#include "reports/words/method_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

int times_noted(const Shop& shop, const Vat& vat, int method_step) {
    return static_cast<int>(std::ranges::count_if(shop.all<VatStep>(), [&](const VatStep& step) {
        return step.head == vat.key && step.method_step == method_step;
    }));
}

const MethodStep* next_step(const Shop& shop, const Vat& vat) {
    if (!vat.method) return nullptr;
    const MethodStep* next = nullptr;
    for (const MethodStep& step : shop.all<MethodStep>()) {
        if (step.head != *vat.method || (next != nullptr && next->position < step.position)) continue;
        if (times_noted(shop, vat, step.position) < std::max(1, times_done(vat, step))) next = &step;
    }
    return next;
}

std::string target_of(const MethodStep& step) {
    const std::string target = reports::step_targets(step);
    return target.empty() ? target : say("Your method says: {target}.", arg("target", target));
}

std::string told_after_a_step(const Shop& shop, Key<Vat> key) {
    const Vat* vat = shop.find(key);
    if (vat == nullptr) return {};
    int last = 0;
    for (const VatStep& step : shop.all<VatStep>())
        if (step.head == key) last = std::max(last, step.position);
    for (const OutsideBand& each : readings_outside(shop, *vat))
        if (each.step == last) return reports::outside_sentence(shop, each);
    const MethodStep* then = next_step(shop, *vat);
    if (then == nullptr) return say("Noted. No step of the method is left: dry and weigh when it is ready.");
    return say("Noted. Next: {step}. {target}", arg("step", then->what), arg("target", target_of(*then)));
}

std::string vat_name(const Shop& shop, const Vat& vat) {
    return say("vat of {day}, {colour}", arg("day", reports::shown_date(vat.date)),
               arg("colour", reports::colour_in_a_sentence(shop, vat.colour)));
}

}  // namespace dyestead::gui
