#include "reports/words/method_words.h"
#include "reports/words/language.h"

#include "domain/text/amounts.h"
#include "reports/words/names.h"
#include "reports/words/say.h"
#include "reports/words/shown.h"

namespace dyestead::reports {
namespace {

std::string shown(Band band, double value) {
    switch (band) {
        case Band::temperature: return shown_number(value) + " °C";
        case Band::acidity: return shown_number(value);
        case Band::waiting: return shown_minutes(value);
        case Band::yield: return shown_grams(value);
    }
    return {};
}

// What your method says, in the reader's words.
std::string band_in_words(const OutsideBand& outside) {
    const auto end = [&](const char* name, const std::optional<double>& value) {
        return arg(name, value ? shown(outside.band, *value) : std::string{});
    };
    const bool one_value = outside.low == outside.high;
    if (outside.low && outside.high && one_value) return shown(outside.band, *outside.low);
    if (outside.low && outside.high) return say("{low} to {high}", end("low", outside.low), end("high", outside.high));
    if (outside.low) return say("{low} or more", end("low", outside.low));
    return say("no more than {high}", end("high", outside.high));
}

std::string between(const std::string& low, const std::string& high) {
    if (low.empty()) return say("up to {high}", arg("high", high));
    if (high.empty()) return say("{low} or more", arg("low", low));
    if (low == high) return low;
    return say("{low} to {high}", arg("low", low), arg("high", high));
}

}  // namespace

std::string step_targets(const MethodStep& step) {
    std::string target;
    const auto add = [&](const std::string& more) { target += (target.empty() ? "" : ", ") + more; };
    const auto text = [](const auto& value) { return value ? in_marks_here(print(*value)) : std::string{}; };
    if (step.temperature_low || step.temperature_high)
        add(say("at {band} °C", arg("band", between(text(step.temperature_low), text(step.temperature_high)))));
    if (step.acidity_low || step.acidity_high)
        add(say("pH {band}", arg("band", between(text(step.acidity_low), text(step.acidity_high)))));
    if (step.hands_on) add(say("{time} hands-on", arg("time", in_marks_here(print(*step.hands_on)))));
    if (step.waiting || step.waiting_high)
        add(say("{time} waiting", arg("time", step.waiting_high ? between(text(step.waiting), text(step.waiting_high))
                                                                : text(step.waiting))));
    return target;
}

std::string outside_sentence(const Shop& shop, const OutsideBand& outside) {
    const auto vat = arg("vat", called(shop, ref(*shop.find(outside.vat))));
    const auto step = arg("step", outside.what);
    const auto found = arg("found", shown(outside.band, outside.found));
    const auto band = arg("band", band_in_words(outside));
    switch (outside.band) {
        case Band::temperature:
            return say("{vat}, {step}: {found} was read. Your method says {band}.", vat, step, found, band);
        case Band::acidity:
            return say("{vat}, {step}: pH {found} was read. Your method says {band}.", vat, step, found, band);
        case Band::waiting:
            return say("{vat}, {step}: it stood {found}. Your method says {band}.", vat, step, found, band);
        case Band::yield:
            return say(
                "{vat} gave {found} of powder from a kilogram of harvest. Your method says {band}.", vat, found, band);
    }
    return {};
}

}  // namespace dyestead::reports
