#include "domain/ledger/losses.h"

namespace dyestead {
namespace {

LossKind kind_of(LossReason reason) {
    switch (reason) {
        case LossReason::spoiled: return LossKind::spoiled;
        case LossReason::spilled: return LossKind::spilled;
        case LossReason::expired: return LossKind::expired;
        case LossReason::other: return LossKind::other;
        case LossReason::given: return LossKind::given;
        case LossReason::sample: return LossKind::sample;
        case LossReason::own_use: return LossKind::own_use;
        case LossReason::test: return LossKind::test;
    }
    return LossKind::other;
}

LossKind kind_of(const Shop& shop, FactRef fact, bool given, bool found) {
    if (fact.kind == kKindOf<Loss>) {
        const Loss* loss = shop.find(Key<Loss>{fact.key});
        return loss == nullptr ? LossKind::other : kind_of(loss->reason);
    }
    if (fact.kind == kKindOf<CountLine>) {
        const CountLine* line = shop.find(Key<CountLine>{fact.key});
        return line == nullptr || !line->reason || found ? LossKind::found_or_missed : kind_of(*line->reason);
    }
    if (given) return LossKind::given;
    if (fact.kind == kKindOf<Planting> || fact.kind == kKindOf<PlantingEnd> || fact.kind == kKindOf<BedLost>)
        return LossKind::failed_crop;
    if (fact.kind == kKindOf<Drying>) return LossKind::failed_vat;
    if (fact.kind == kKindOf<Cut>) return LossKind::rejected_bars;
    if (fact.kind == kKindOf<AlreadyHere> || fact.kind == kKindOf<Delivery> || fact.kind == kKindOf<DeliveryLine>)
        return LossKind::nothing_for_it;
    if (fact.kind == kKindOf<Count> || fact.kind == kKindOf<CountLine>) return LossKind::found_or_missed;
    return LossKind::other;
}

bool is_lost_or_given(Account account) {
    return account == dyestead::account(Boundary::lost) || account == dyestead::account(Boundary::given);
}

}  // namespace

std::optional<LossKind> loss_kind(const Shop& shop, const Ledger& ledger, const Movement& movement) {
    const bool out = is_lost_or_given(movement.to);
    if (out == is_lost_or_given(movement.from)) return std::nullopt;
    const bool given = (out ? movement.to : movement.from) == account(Boundary::given);
    return kind_of(shop, ledger.sources[movement.source].fact, given, !out);
}

std::vector<LossLine> losses(const Shop& shop, const Ledger& ledger, Period period) {
    std::vector<LossLine> lines;
    for (const Movement& movement : ledger.movements) {
        if (!period.contains(movement.on())) continue;
        const auto kind = loss_kind(shop, ledger, movement);
        if (!kind) continue;
        const bool out = is_lost_or_given(movement.to);
        const Source& source = ledger.sources[movement.source];
        LossLine line;
        line.kind = *kind;
        line.fact = source.fact;
        line.day = movement.on();
        line.material = source.material;
        line.quantity = out ? movement.quantity : -movement.quantity;
        line.cost = out ? movement.cost : -movement.cost;
        lines.push_back(line);
    }
    return lines;
}

}  // namespace dyestead
