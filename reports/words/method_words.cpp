#include "reports/words/method_words.h"

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

}  // namespace

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
