#include "domain/ledger/statements.h"

#include "domain/ledger/in_force.h"
#include "domain/ledger/terms.h"

namespace dyestead {
CostPartition cost_partition(const Shop& shop, const Ledger& ledger, Day day) {
    const std::vector<Cost> held = balances_at(ledger, day);
    CostPartition terms;
    for (Account each = 0; each < ledger.accounts.end; ++each) {
        switch (term_of(shop, ledger, each, day)) {
            case Term::in: terms.in -= held[each]; break;
            case Term::stock: terms.stock += held[each]; break;
            case Term::in_progress: terms.in_progress += held[each]; break;
            case Term::sold: terms.sold += held[each]; break;
            case Term::lost: terms.lost += held[each]; break;
            case Term::given: terms.given += held[each]; break;
            case Term::period: terms.period += held[each]; break;
        }
    }
    Cost accrued;
    accrued.overhead = overhead_accrued(shop, day) + dye_wear_accrued(shop, day);
    terms.in += accrued;
    terms.period += accrued;
    return terms;
}

std::vector<QuantityPartition> quantity_partitions(const Shop& shop, const Ledger& ledger, Day day) {
    std::vector<QuantityPartition> terms(shop.all<Material>().size());
    std::vector<std::int64_t> in_lot(ledger.lots.size());
    const AccountPlan& plan = ledger.accounts;
    for (const Movement& movement : ledger.movements) {
        if (movement.on() > day) break;
        if (movement.quantity == 0) continue;
        QuantityPartition& term = terms[ledger.sources[movement.source].material];
        const bool out_of_lot = plan.kind(movement.from) == AccountKind::lot;
        const bool out_of_shop = plan.kind(movement.from) == AccountKind::out;
        if (out_of_lot) {
            in_lot[plan.index(movement.from)] -= movement.quantity;
        } else if (out_of_shop) {
            term.stock -= movement.quantity;
        } else if (movement.from == account(Boundary::sold)) {
            term.sold -= movement.quantity;
        } else if (movement.from == account(Boundary::lost)) {
            term.lost -= movement.quantity;  // found at a count
        } else if (movement.from < kBoundaries) {
            term.in += movement.quantity;
        } else {
            term.made += movement.quantity;
        }
        const bool into_use = out_of_lot || movement.from == account(Boundary::provisional) ||
                              (out_of_shop && movement.to == account(Boundary::sold));
        if (!into_use) {
            in_lot[plan.index(movement.to)] += movement.quantity;
        } else if (plan.kind(movement.to) == AccountKind::out) {
            term.stock += movement.quantity;
        } else if (movement.to == account(Boundary::provisional)) {
            term.in -= movement.quantity;
        } else if (movement.to == account(Boundary::sold)) {
            term.sold += movement.quantity;
        } else if (movement.to == account(Boundary::lost)) {
            term.lost += movement.quantity;
        } else if (movement.to == account(Boundary::given)) {
            term.given += movement.quantity;
        } else {
            term.used += movement.quantity;
        }
    }
    for (std::uint32_t lot = 0; lot < in_lot.size(); ++lot) {
        const Material* material = shop.find(shop.all<Lot>()[lot].material);
        if (material == nullptr) continue;
        QuantityPartition& term = terms[static_cast<std::size_t>(material - shop.all<Material>().data())];
        (in_cure(shop, ledger, lot, day) ? term.in_progress : term.stock) += in_lot[lot];
    }
    return terms;
}

}  // namespace dyestead
