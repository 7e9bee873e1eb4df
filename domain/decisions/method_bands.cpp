#include "domain/decisions/method_bands.h"

#include "domain/decisions/records.h"
#include "domain/facts/lines_of.h"

namespace dyestead {
namespace {

double number(Temperature temperature) {
    return temperature.tenths / 10.0;
}
double number(Acidity acidity) {
    return acidity.hundredths / 100.0;
}
template <class Reading>
std::optional<double> number(const std::optional<Reading>& reading) {
    return reading ? std::optional{number(*reading)} : std::nullopt;
}

// Compared as it was read, in whole tenths or hundredths.
template <class Reading>
bool outside(Reading found, const std::optional<Reading>& low, const std::optional<Reading>& high) {
    return (low && found < *low) || (high && found > *high);
}

// As noted, else by the clock; nothing where neither says.
std::optional<Minutes> waited(std::span<const VatStep* const> steps, std::size_t at) {
    const VatStep& step = *steps[at];
    if (step.waiting) return step.waiting->time;
    if (!step.begun || at + 1 == steps.size() || !steps[at + 1]->begun) return std::nullopt;
    const Minutes gone =
        between(*step.begun, *steps[at + 1]->begun) - (step.hands_on ? step.hands_on->time : Minutes{});
    return gone < Minutes{} ? std::nullopt : std::optional{gone};
}

std::optional<double> minutes_of(const std::optional<Span>& span) {
    return span ? std::optional{number(span->time)} : std::nullopt;
}

std::optional<double> grams_of(const std::optional<Amount>& amount) {
    if (!amount || amount->quantity.kind() != Kind::mass) return std::nullopt;
    return static_cast<double>(amount->quantity.in_base()) / 1e3;
}

}  // namespace

std::vector<OutsideBand> readings_outside(const Shop& shop, const Vat& vat) {
    std::vector<OutsideBand> found;
    if (!vat.method) return found;
    const LinesOf<VatStep> steps{shop};
    const LinesOf<MethodStep> method{shop};
    const auto done = steps(vat.key);
    for (std::size_t at = 0; at < done.size(); ++at) {
        const VatStep* step = done[at];
        for (const MethodStep* says : method(*vat.method)) {
            if (step->method_step != says->position) continue;
            const std::string& what = step->what.empty() ? says->what : step->what;
            if (step->temperature && outside(*step->temperature, says->temperature_low, says->temperature_high))
                found.push_back({Band::temperature, vat.key, step->position, what, number(*step->temperature),
                                 number(says->temperature_low), number(says->temperature_high)});
            if (step->acidity && outside(*step->acidity, says->acidity_low, says->acidity_high))
                found.push_back({Band::acidity, vat.key, step->position, what, number(*step->acidity),
                                 number(says->acidity_low), number(says->acidity_high)});
            const auto stood = waited(done, at);
            const auto low = says->waiting_high ? minutes_of(says->waiting) : std::nullopt;
            const auto high = minutes_of(says->waiting_high);
            if (stood && outside(number(*stood), low, high))
                found.push_back({Band::waiting, vat.key, step->position, what, number(*stood), low, high});
        }
    }
    return found;
}

std::optional<OutsideBand> yield_outside(const Shop& shop, const FinishedVat& vat) {
    const Method* method = vat.vat->method ? shop.find(*vat.vat->method) : nullptr;
    if (method == nullptr || vat.failed() || vat.kg <= 0) return std::nullopt;
    const double found = vat.grams / vat.kg;
    const auto low = grams_of(method->low);
    const auto high = grams_of(method->high);
    if (!outside(found, low, high)) return std::nullopt;
    return OutsideBand{Band::yield, vat.vat->key, 0, {}, found, low, high};
}

}  // namespace dyestead
