#include "domain/ledger/ledger.h"

namespace dyestead {

AccountPlan account_plan(const Shop& shop) {
    const auto count = [](const auto& list) { return static_cast<Account>(list.size()); };
    AccountPlan plan;
    plan.lots = kBoundaries;
    plan.plantings = plan.lots + count(shop.all<Lot>());
    plan.vats = plan.plantings + count(shop.all<Planting>());
    plan.batches = plan.vats + count(shop.all<Vat>());
    plan.outs = plan.batches + count(shop.all<Batch>());
    plan.pools = plan.outs + count(shop.all<OutAtShop>());
    plan.end = plan.pools + count(shop.all<Material>());
    return plan;
}

}  // namespace dyestead
