#include <map>

#include "domain/decisions/pigment_pool.h"
#include "domain/decisions/verdict.h"

namespace dyestead {
namespace {

// Nothing where the hours were for no colour.
std::optional<Key<Colour>> colour_of(const Records& records, const std::map<Key<Lot>, Key<Planting>>& harvested,
                                     Account worked_on) {
    const auto of_planting = [&](const Planting* planting) -> std::optional<Key<Colour>> {
        const Plant* plant = planting == nullptr ? nullptr : records.shop.find(planting->plant);
        return plant == nullptr ? std::nullopt : plant->colour;
    };
    switch (records.kind(worked_on)) {
        case AccountKind::planting: return of_planting(&records.planting(worked_on));
        case AccountKind::vat: return records.vat(worked_on).colour;
        case AccountKind::lot: {
            const auto harvest = harvested.find(records.lot(worked_on).key);
            return harvest == harvested.end() ? std::nullopt : of_planting(records.shop.find(harvest->second));
        }
        case AccountKind::batch:
        case AccountKind::out:
        case AccountKind::pool:
        case AccountKind::boundary: return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace

std::optional<Key<Colour>> most_worked_colour(const Shop& shop, const Ledger& ledger, int months) {
    const Records records{shop, ledger};
    const Window window = months_to(ledger.as_of, months);
    std::map<Key<Lot>, Key<Planting>> harvested;
    for (const Harvest& harvest : shop.all<Harvest>()) harvested.emplace(harvest.lot, harvest.planting);
    std::map<Key<Colour>, Minutes> worked;
    for (const Movement& movement : ledger.movements) {
        if (movement.from != account(Boundary::hours) || !window.contains(movement.on())) continue;
        if (const auto colour = colour_of(records, harvested, movement.to)) worked[*colour] += movement.cost.hands_on;
    }
    const Colour* most = nullptr;
    for (const Colour& each : shop.all<Colour>()) {
        const bool more = most == nullptr || worked[each.key] > worked[most->key] ||
                          (worked[each.key] == worked[most->key] && each.code < most->code);
        if (more) most = &each;
    }
    return most == nullptr ? std::nullopt : std::optional{most->key};
}

std::optional<Key<Colour>> colour_by_code(const Shop& shop, std::string_view code) {
    for (const Colour& each : shop.all<Colour>())
        if (each.code == code) return each.key;
    return std::nullopt;
}

}  // namespace dyestead
