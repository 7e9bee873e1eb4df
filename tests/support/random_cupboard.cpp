#include "tests/support/random_cupboard.h"

namespace dyestead::test {
namespace {

// Of all there are; `bought` alone: raw ones and seed.
Key<Material> one_of(ShopBuilder& builder, int number, bool bought) {
    std::vector<Key<Material>> found;
    for (const Material& each : builder.all<Material>())
        if (!bought || each.kind == MaterialKind::raw || each.kind == MaterialKind::seed) found.push_back(each.key);
    return found[static_cast<std::size_t>(number) % found.size()];
}

void bill(ShopBuilder& builder, const Act& act, Day day) {
    const Key<Material> material = one_of(builder, act.c, true);
    builder.delivery(day, material, some_of(builder, material, act.a), Money::millionths(act.b * 54'322LL),
                     Money::millionths((act.c % 5) * 1'111'111LL));
    builder.all<DeliveryLine>().back().tax = Ratio{act.c % 3 * 10, 100};
    auto& fact = builder.all<Delivery>().back();
    if (act.a % 2 == 0) fact.duty = Money::millionths(act.c * 1'003LL);
    if (act.b % 3 != 0) fact.discount = Money::millionths(act.a * 20'011LL);
    if (act.c % 4 == 0) fact.currency = "SEK";
    if (act.c % 8 == 0) fact.rate = Ratio{89, 1'000};
    if (act.b % 4 == 0) fact.share_by = ShareBy::weight;
    const Key<Delivery> key = fact.key;
    if (act.b % 2 == 0) {
        const Key<Material> other = one_of(builder, act.a, true);
        const Key<Lot> lot = builder.lot(other);
        auto& line = builder.add<DeliveryLine>(key);
        line.lot = lot;
        line.amount = some_of(builder, other, act.c);
        line.price = Money::millionths(act.c * 20'014LL);
    }
    if (act.a % 37 == 0) {
        auto& registered = builder.add<SalesTax>();
        registered.from = day;
        registered.rate = Ratio{act.b % 2 * 20, 100};
    }
}

void correction(ShopBuilder& builder, const Act& act, Day day) {
    if (builder.all<Delivery>().empty()) return;
    const auto& all = builder.all<Delivery>();
    const Key<Delivery> delivery = all[static_cast<std::size_t>(act.a) % all.size()].key;
    auto& fact = builder.add<CostCorrection>();
    fact.date = day;
    fact.delivery = delivery;
    fact.correction = act.b % 2 == 0 ? Correction::more : Correction::less;
    fact.amount = Money::millionths(act.c * 9'013LL);
}

void count(ShopBuilder& builder, const Act& act, Day day) {
    auto& fact = builder.add<Count>();
    fact.date = day;
    const Key<Count> key = fact.key;
    for (int i = 0; i < 1 + act.c % 3; ++i) {
        const Key<Material> material = one_of(builder, act.b + i * act.a, false);
        const auto lot = act.a % 3 == 0 ? a_lot_of(builder, material, act.b + i) : std::nullopt;
        auto& line = builder.add<CountLine>(key);
        line.material = material;
        line.lot = lot;
        if (act.c % 7 != 0) line.counted = some_of(builder, material, act.c * (i + 1) % 500);
        if (act.b % 2 == 0) line.reason = static_cast<LossReason>(act.a % 8);
    }
}

void cost_rule(ShopBuilder& builder, const Act& act, Day day) {
    const Key<Material> material = one_of(builder, act.b, act.a % 5 != 0);
    auto& fact = builder.add<CostRule>();
    fact.from = act.c % 3 == 0 ? day : act.c % 3 == 1 ? kFirstDay : day_of(2026, 3, 1);
    if (act.b % 3 != 0) fact.material = material;
    fact.cost_by = act.a % 3 == 0 ? CostBy::lot : CostBy::average;
}

}  // namespace

Amount some_of(ShopBuilder& builder, Key<Material> material, int number) {
    if (builder.at(material).held_as == HeldAs::count) return pieces(number);
    return number % 4 == 0 && builder.at(material).density
               ? Amount{Quantity::microlitres(number * 1'000LL), Unit::ml, Mark::measured}
               : Amount{Quantity::milligrams(number * 1'001LL), Unit::mg, Mark::measured};
}

std::optional<Key<Lot>> a_lot_of(ShopBuilder& builder, Key<Material> material, int number) {
    std::vector<Key<Lot>> found;
    for (const Lot& lot : builder.all<Lot>())
        if (lot.material == material) found.push_back(lot.key);
    if (found.empty()) return std::nullopt;
    return found[static_cast<std::size_t>(number) % found.size()];
}

void cupboard_act(ShopBuilder& builder, const Act& act, Day day) {
    switch (act.what - kFirstCupboardAct) {
        case 0: return bill(builder, act, day);
        case 1: return correction(builder, act, day);
        case 2: return count(builder, act, day);
        case 3: return cost_rule(builder, act, day);
        default: return;
    }
}

}  // namespace dyestead::test
