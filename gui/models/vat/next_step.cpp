#include "gui/models/vat/next_step.h"

#include <algorithm>

#include "domain/decisions/method_bands.h"
#include "domain/decisions/steps_as_done.h"
#include "domain/text/amounts.h"
#include "reports/words/language.h"
#include "reports/words/method_words.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::gui {

using reports::arg;
using reports::say;

namespace {

std::string between(const std::string& low, const std::string& high) {
    if (low.empty()) return say("up to {high}", arg("high", high));
    if (high.empty() || low == high) return say("{low}", arg("low", low));
    return say("{low} to {high}", arg("low", low), arg("high", high));
}

}  // namespace

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
    std::string target;
    const auto add = [&](const std::string& more) { target += (target.empty() ? "" : ", ") + more; };
    const auto text = [](const auto& value) { return value ? reports::in_marks_here(print(*value)) : std::string{}; };
    if (step.temperature_low || step.temperature_high)
        add(say("at {band} °C", arg("band", between(text(step.temperature_low), text(step.temperature_high)))));
    if (step.acidity_low || step.acidity_high)
        add(say("pH {band}", arg("band", between(text(step.acidity_low), text(step.acidity_high)))));
    if (step.hands_on) add(say("{time} hands-on", arg("time", reports::in_marks_here(print(*step.hands_on)))));
    if (step.waiting || step.waiting_high)
        add(say("{time} waiting", arg("time", between(text(step.waiting), text(step.waiting_high)))));
    if (target.empty()) return {};
    return say("Your method says: {target}.", arg("target", target));
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
