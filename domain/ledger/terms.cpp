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
        case Boundary::other: return Term::period;
    }
    return Term::period;
}

Term term_of(const Shop& shop, const Ledger& ledger, Account account, Day day) {
    switch (ledger.accounts.kind(account)) {
        case AccountKind::boundary: return term_of(static_cast<Boundary>(account));
        case AccountKind::lot:
            return in_cure(shop, ledger, ledger.accounts.index(account), day) ? Term::in_progress : Term::stock;
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

}  // namespace dyestead
