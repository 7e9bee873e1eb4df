#include "domain/ledger/terms.h"

namespace dyestead {

Term term_of(Boundary boundary) {
    switch (boundary) {
        case Boundary::already_here:
        case Boundary::delivered:
        case Boundary::wages:
        case Boundary::energy:
        case Boundary::hours:
        case Boundary::bills:
        case Boundary::provisional: return Term::in;
        case Boundary::sold: return Term::sold;
        case Boundary::lost: return Term::lost;
        case Boundary::given: return Term::given;
        case Boundary::selling:
        case Boundary::garden:
        case Boundary::overhead:
        case Boundary::dye_avoidable:
        case Boundary::dye_sunk:
        case Boundary::shortfall:
        case Boundary::office:
        case Boundary::corrections:
        case Boundary::other: return Term::period;
    }
    return Term::period;
}

Term term_of(const Shop& shop, const Ledger& ledger, Account account, Day day) {
    switch (ledger.accounts.kind(account)) {
        case AccountKind::boundary: return term_of(static_cast<Boundary>(account));
        case AccountKind::lot:
            return in_cure(shop, ledger, ledger.accounts.index(account), day) ? Term::in_progress : Term::stock;
        case AccountKind::pool: return Term::stock;
        case AccountKind::planting:
        case AccountKind::vat:
        case AccountKind::batch: return Term::in_progress;
        case AccountKind::out: return Term::stock;
    }
    return Term::in_progress;
}

bool in_cure(const Shop& shop, const Ledger& ledger, std::uint32_t lot, Day day) {
    const Material* material = shop.find(shop.all<Lot>()[lot].material);
    return material != nullptr && material->kind == MaterialKind::bar && ledger.lots[lot].ready > day;
}

std::vector<Cost> balances_at(const Ledger& ledger, Day day) {
    std::vector<Cost> balances(ledger.accounts.end);
    for (const Movement& movement : ledger.movements) {
        if (movement.on() > day) break;
        balances[movement.from] -= movement.cost;
        balances[movement.to] += movement.cost;
    }
    return balances;
}

std::vector<Cost> lot_costs(const Shop& shop, const AccountPlan& plan, const std::vector<Cost>& held,
                            const std::vector<std::int64_t>& left) {
    const auto& lots = shop.all<Lot>();
    const auto& materials = shop.all<Material>();
    std::vector<Cost> rest{held.begin() + plan.pools, held.begin() + plan.end};
    std::vector<std::int64_t> behind(materials.size());
    const auto pool_of = [&](std::size_t lot) {
        const Material* material = shop.find(lots[lot].material);
        return material == nullptr ? materials.size() : static_cast<std::size_t>(material - materials.data());
    };
    for (std::size_t lot = 0; lot < lots.size(); ++lot)
        if (const std::size_t pool = pool_of(lot); pool < materials.size()) behind[pool] += left[lot];
    std::vector<Cost> costs;
    costs.reserve(lots.size());
    for (std::size_t lot = 0; lot < lots.size(); ++lot) {
        costs.push_back(held[plan.lots + lot]);
        const std::size_t pool = pool_of(lot);
        if (left[lot] == 0 || pool == materials.size() || rest[pool].is_zero()) continue;
        const Cost share = share_of(rest[pool], left[lot], behind[pool]);
        rest[pool] -= share;
        behind[pool] -= left[lot];
        costs.back() += share;
    }
    return costs;
}

}  // namespace dyestead
