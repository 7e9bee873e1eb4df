#include "domain/ledger/stock_value.h"

namespace dyestead {
namespace {

StockKind kind_of(MaterialKind kind) {
    switch (kind) {
        case MaterialKind::raw: return StockKind::raw;
        case MaterialKind::seed: return StockKind::seed;
        case MaterialKind::harvest: return StockKind::harvest;
        case MaterialKind::pigment: return StockKind::pigment;
        case MaterialKind::bar: return StockKind::bars_ready;
    }
    return StockKind::raw;
}

// How many bars are out, in thousandths, by OutAtShop.
std::vector<std::int64_t> out_at_shops(const Ledger& ledger, Day day) {
    const AccountPlan& plan = ledger.accounts;
    std::vector<std::int64_t> out(plan.pools - plan.outs);
    for (const Movement& movement : ledger.movements) {
        if (movement.on() > day) break;
        if (plan.kind(movement.from) == AccountKind::out) out[plan.index(movement.from)] -= movement.quantity;
        if (plan.kind(movement.to) == AccountKind::out) out[plan.index(movement.to)] += movement.quantity;
    }
    return out;
}

}  // namespace

StockKind stock_kind(const Shop& shop, const Ledger& ledger, Account account, Day day) {
    const std::uint32_t index = ledger.accounts.index(account);
    switch (ledger.accounts.kind(account)) {
        case AccountKind::boundary: break;
        case AccountKind::lot: {
            if (in_cure(shop, ledger, index, day)) return StockKind::bars_in_cure;
            const Material* material = shop.find(shop.all<Lot>()[index].material);
            return material == nullptr ? StockKind::raw : kind_of(material->kind);
        }
        case AccountKind::planting: return StockKind::plantings;
        case AccountKind::vat: return StockKind::vats;
        case AccountKind::batch: return StockKind::batches;
        case AccountKind::out: return StockKind::bars_out;
        case AccountKind::pool: return kind_of(shop.all<Material>()[index].kind);
    }
    return StockKind::raw;
}

Cost StockValue::stock() const {
    Cost sum;
    for (std::size_t kind = 0; kind < kStockKinds; ++kind)
        if (!is_in_progress(static_cast<StockKind>(kind))) sum += of[kind];
    return sum;
}

Cost StockValue::in_progress() const {
    Cost sum;
    for (std::size_t kind = 0; kind < kStockKinds; ++kind)
        if (is_in_progress(static_cast<StockKind>(kind))) sum += of[kind];
    return sum;
}

std::vector<LotQuantity> lot_quantities(const Shop& shop, const Ledger& ledger, Day day) {
    std::vector<LotQuantity> lots(ledger.lots.size());
    const auto& materials = shop.all<Material>();
    const AccountPlan& plan = ledger.accounts;
    for (const Movement& movement : ledger.movements) {
        if (movement.on() > day) break;
        if (movement.quantity == 0) continue;
        if (plan.kind(movement.from) == AccountKind::lot) lots[plan.index(movement.from)].left -= movement.quantity;
        if (plan.kind(movement.to) != AccountKind::lot) continue;
        // Wrapping goes into a lot of bars and makes no bar.
        const std::uint32_t to = plan.index(movement.to);
        const Key<Material> moved = materials[ledger.sources[movement.source].material].key;
        if (moved != shop.all<Lot>()[to].material) continue;
        lots[to].left += movement.quantity;
        lots[to].received += movement.quantity;
    }
    return lots;
}

StockValue stock_value(const Shop& shop, const Ledger& ledger, Day day) {
    const std::vector<Cost> held = balances_at(ledger, day);
    const std::vector<LotQuantity> lots = lot_quantities(shop, ledger, day);
    const std::vector<std::int64_t> out = out_at_shops(ledger, day);
    std::vector<std::int64_t> left;
    for (const LotQuantity& lot : lots) left.push_back(lot.left);
    const std::vector<Cost> lot_cost = lot_costs(shop, ledger.accounts, held, left);
    StockValue value;
    for (Account each = kBoundaries; each < ledger.accounts.pools; ++each) {
        StockItem item;
        item.kind = stock_kind(shop, ledger, each, day);
        item.account = each;
        item.cost = held[each];
        if (ledger.accounts.kind(each) == AccountKind::lot) {
            item.quantity = left[ledger.accounts.index(each)];
            item.cost = lot_cost[ledger.accounts.index(each)];
        }
        if (ledger.accounts.kind(each) == AccountKind::out) item.quantity = out[ledger.accounts.index(each)];
        if (item.quantity == 0 && item.cost.is_zero()) continue;
        value.of[static_cast<std::size_t>(item.kind)] += item.cost;
        value.items.push_back(item);
    }
    return value;
}

}  // namespace dyestead
