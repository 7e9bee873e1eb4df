#include "domain/ledger/where_used.h"

#include <algorithm>
#include <deque>
#include <map>

namespace dyestead {
namespace {

// Goods moved, with shortfalls put back to the day on which they were used: they are settled first come,
// first served, as in allocate.h.
std::vector<UseStep> moves(const Ledger& ledger) {
    constexpr Account kProvisional = account(Boundary::provisional);
    struct Owed {
        std::uint32_t movement = 0;
        std::int64_t quantity = 0;
    };
    std::vector<UseStep> all;
    std::map<std::uint32_t, std::deque<Owed>> owed;  // by material
    for (std::uint32_t at = 0; at < ledger.movements.size(); ++at) {
        const Movement& movement = ledger.movements[at];
        const Source& source = ledger.sources[movement.source];
        if (movement.from == kProvisional) {
            owed[source.material].push_back({at, movement.quantity});
        } else if (movement.to == kProvisional) {
            auto& waiting = owed[source.material];
            for (std::int64_t rest = movement.quantity; rest > 0 && !waiting.empty();) {
                Owed& first = waiting.front();
                const std::int64_t settled = std::min(rest, first.quantity);
                all.push_back({first.movement, movement.from, ledger.movements[first.movement].to, settled, false});
                rest -= settled;
                first.quantity -= settled;
                if (first.quantity == 0) waiting.pop_front();
            }
        } else {
            all.push_back({at, movement.from, movement.to, movement.quantity, source.named_lot});
        }
    }
    std::ranges::stable_sort(all, {}, &UseStep::movement);
    return all;
}

}  // namespace

std::vector<UseStep> where_used(const Ledger& ledger, std::uint32_t lot) {
    std::vector<UseStep> steps;
    std::map<Account, bool> reached{{ledger.accounts.lots + lot, true}};  // and whether by named steps alone
    const auto is_boundary = [](Account account) { return account < kBoundaries; };
    for (UseStep move : moves(ledger)) {
        const auto from = reached.find(move.from);
        if (from == reached.end()) continue;
        // Cost alone reaches no goods, except where several vats go into one powder.
        if (move.quantity == 0 && (is_boundary(move.to) || ledger.accounts.kind(move.from) == AccountKind::lot))
            continue;
        // Out of a bed, vat or batch comes what was made of all that is in it.
        const bool made = ledger.accounts.kind(move.from) != AccountKind::lot;
        move.named = from->second && (made || move.named);
        if (!is_boundary(move.to)) {
            bool& named = reached[move.to];
            named = named || move.named;
        }
        steps.push_back(move);
    }
    return steps;
}

}  // namespace dyestead
