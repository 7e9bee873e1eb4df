#include "domain/ledger/goods_moved.h"

#include <algorithm>
#include <deque>
#include <limits>
#include <map>

namespace dyestead {
namespace {

constexpr Account kProvisional = account(Boundary::provisional);
constexpr std::int64_t kBegin = -1;
constexpr std::int64_t kEnd = std::numeric_limits<std::int64_t>::max();

bool is_boundary(Account account) {
    return account < kBoundaries;
}

bool is_pool(const Ledger& ledger, Account account) {
    return ledger.accounts.kind(account) == AccountKind::pool;
}

// A use that ran short, until goods settle it: first come, first served, as in allocate.h.
struct Owed {
    std::uint32_t movement = 0;
    std::int64_t quantity = 0;
};

GoodsMove step_of(const Ledger& ledger, std::uint32_t movement, std::uint32_t settled, Account from,
                  std::int64_t quantity, Known known) {
    return {movement, settled, from, from, ledger.movements[movement].to, quantity, known};
}

// Cost alone reaches no goods, except where a vat or batch goes on into another or into a powder.
bool moves_goods(const Ledger& ledger, const Movement& movement) {
    if (is_boundary(movement.from) || is_pool(ledger, movement.from) || is_pool(ledger, movement.to)) return false;
    if (movement.quantity != 0) return true;
    return !is_boundary(movement.to) && ledger.accounts.kind(movement.from) != AccountKind::lot;
}

std::vector<GoodsMove> shortfalls_put_back(const Ledger& ledger) {
    std::vector<GoodsMove> all;
    all.reserve(ledger.movements.size());
    std::map<std::uint32_t, std::deque<Owed>> owed;  // by material
    for (std::uint32_t at = 0; at < ledger.movements.size(); ++at) {
        const Movement& movement = ledger.movements[at];
        const Source& source = ledger.sources[movement.source];
        if (movement.from == kProvisional && movement.quantity > 0) {
            owed[source.material].push_back({at, movement.quantity});
        } else if (movement.to == kProvisional) {
            auto& waiting = owed[source.material];
            for (std::int64_t rest = movement.quantity; rest > 0 && !waiting.empty();) {
                Owed& first = waiting.front();
                const std::int64_t part = std::min(rest, first.quantity);
                all.push_back(step_of(ledger, first.movement, at, movement.from, part, Known::by_rule));
                rest -= part;
                first.quantity -= part;
                if (first.quantity == 0) waiting.pop_front();
            }
        } else if (moves_goods(ledger, movement)) {
            const bool made = ledger.accounts.kind(movement.from) != AccountKind::lot;
            const Known known = made || source.named_lot ? Known::named : Known::by_rule;
            all.push_back(step_of(ledger, at, at, movement.from, movement.quantity, known));
        }
    }
    for (const auto& [material, open] : owed)
        for (const Owed& each : open)
            all.push_back(step_of(ledger, each.movement, each.movement, kProvisional, each.quantity, Known::by_rule));
    if (!std::ranges::is_sorted(all, {}, &GoodsMove::movement)) std::ranges::stable_sort(all, {}, &GoodsMove::movement);
    return all;
}

// Bars that are out at a shop leave it in the order in which their lots went there.
std::vector<GoodsMove> by_lot(const Ledger& ledger, std::vector<GoodsMove> moves) {
    if (ledger.accounts.outs == ledger.accounts.pools) return moves;
    struct Piece {
        Account of = 0;
        std::int64_t quantity = 0;
        std::uint32_t settled = 0;
        Known known{};
    };
    std::map<Account, std::vector<Piece>> out;
    std::vector<GoodsMove> all;
    for (const GoodsMove& move : moves) {
        if (ledger.accounts.kind(move.to) == AccountKind::out)
            out[move.to].push_back({move.from, move.quantity, move.settled, move.known});
        if (ledger.accounts.kind(move.from) != AccountKind::out) {
            all.push_back(move);
            continue;
        }
        std::int64_t rest = move.quantity;
        for (Piece& piece : out[move.from]) {
            const bool back_to_another = ledger.accounts.kind(move.to) == AccountKind::lot && piece.of != move.to;
            const std::int64_t part = back_to_another ? 0 : std::min(rest, piece.quantity);
            if (part == 0) continue;
            piece.quantity -= part;
            rest -= part;
            GoodsMove of_lot = move;
            of_lot.of = piece.of;
            of_lot.quantity = part;
            of_lot.known = std::max(move.known, piece.known);
            of_lot.settled = std::max(move.settled, piece.settled);
            all.push_back(of_lot);
        }
    }
    return all;
}

}  // namespace

std::vector<GoodsMove> goods_moved(const Ledger& ledger) {
    return by_lot(ledger, shortfalls_put_back(ledger));
}

Followed::Followed(std::size_t accounts, bool is_forward) : is_forward_{is_forward} {
    std::array<std::int64_t, kKnown> never{};
    never.fill(is_forward ? kEnd : kBegin - 1);
    marks_.assign(accounts, never);
}

bool Followed::carries(const GoodsMove& move, std::size_t sureness) const {
    if (static_cast<std::size_t>(move.known) > sureness) return false;
    if (is_forward_) return !is_boundary(move.of) && marks_[move.of][sureness] <= move.settled;
    return !is_boundary(move.to) && marks_[move.to][sureness] >= move.movement;
}

// Until nothing changes: a shortfall is settled from goods that are themselves made later.
void Followed::follow(const std::vector<GoodsMove>& moves, const std::vector<Account>& begin) {
    for (const Account each : begin) marks_[each].fill(is_forward_ ? kBegin : kEnd);
    const auto post = [&](const GoodsMove& move) {
        const Account next = is_forward_ ? move.to : move.of;
        if (is_boundary(next)) return false;
        bool changed = false;
        for (std::size_t sureness = 0; sureness < kKnown; ++sureness) {
            if (!carries(move, sureness)) continue;
            std::int64_t& mark = marks_[next][sureness];
            const std::int64_t reached =
                is_forward_ ? std::min<std::int64_t>(mark, move.movement) : std::max<std::int64_t>(mark, move.settled);
            changed = changed || reached != mark;
            mark = reached;
        }
        return changed;
    };
    for (bool changed = true; changed;) {
        changed = false;
        if (is_forward_)
            for (const GoodsMove& move : moves) changed = post(move) || changed;
        else
            for (std::size_t at = moves.size(); at > 0; --at) changed = post(moves[at - 1]) || changed;
    }
}

Followed Followed::forward(const Ledger& ledger, const std::vector<GoodsMove>& moves,
                           const std::vector<Account>& begin) {
    Followed all{ledger.accounts.end, true};
    all.follow(moves, begin);
    return all;
}

Followed Followed::backward(const Ledger& ledger, const std::vector<GoodsMove>& moves,
                            const std::vector<Account>& begin) {
    Followed all{ledger.accounts.end, false};
    all.follow(moves, begin);
    return all;
}

std::optional<Known> Followed::at(Account account) const {
    for (std::size_t sureness = 0; sureness < kKnown; ++sureness) {
        const std::int64_t mark = marks_[account][sureness];
        if (mark != kEnd && is_forward_) return Known{static_cast<std::uint8_t>(sureness)};
        if (mark >= kBegin && !is_forward_) return Known{static_cast<std::uint8_t>(sureness)};
    }
    return std::nullopt;
}

std::optional<Known> Followed::step(const GoodsMove& move) const {
    for (std::size_t sureness = 0; sureness < kKnown; ++sureness)
        if (carries(move, sureness)) return Known{static_cast<std::uint8_t>(sureness)};
    return std::nullopt;
}

}  // namespace dyestead
