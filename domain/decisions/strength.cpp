#include "domain/decisions/strength.h"

namespace dyestead {
namespace {

std::optional<double> strength_of_lot(const Records& records, const Colour& colour, Key<Lot> lot) {
    const ShadeTest* newest = nullptr;
    for (const ShadeTest& test : records.shop.all<ShadeTest>())
        if (test.lot == lot && test.against == colour.bought_match && test.date <= records.ledger.as_of &&
            (newest == nullptr || test.date >= newest->date))
            newest = &test;
    if (newest == nullptr || !newest->needed_for_same || newest->needed_for_same->top <= 0) return std::nullopt;
    return match_strength(colour) / number(*newest->needed_for_same);
}

}  // namespace

double match_strength(const Colour& colour) {
    return colour.match_strength && colour.match_strength->top > 0 ? number(*colour.match_strength) : 1;
}

Strength strength_of(const Records& records, const Colour& colour, const std::vector<FinishedVat>& vats) {
    double all = 0;
    double tested = 0;
    double in_standard = 0;
    for (const FinishedVat& vat : vats) {
        for (const PowderLot& powder : vat.powder) {
            if (powder.left() <= 0) continue;
            all += powder.left();
            const auto strength = strength_of_lot(records, colour, powder.lot->key);
            if (!strength) continue;
            tested += powder.left();
            in_standard += powder.left() * *strength;
        }
    }
    if (tested <= 0) return {};
    return {tested / all, in_standard / tested};
}

}  // namespace dyestead
