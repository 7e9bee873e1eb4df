#include "domain/decisions/recall.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <tuple>

#include "domain/facts/lines_of.h"

namespace dyestead {
namespace {

template <class Fact>
const Fact* fact_at(const Shop& shop, std::optional<FactRef> fact) {
    return fact && fact->kind == kKindOf<Fact> ? shop.find(Key<Fact>{fact->key}) : nullptr;
}

bool says_something(const std::optional<std::string>& text) {
    return text && text->find_first_not_of(" \t") != std::string::npos;
}

// Where goods that went out of the shop, or of use, are now.
Heap heap_of(const Shop& shop, FactRef by) {
    const auto* line = fact_at<SaleLine>(shop, by);
    const auto* powder = fact_at<PowderLine>(shop, by);
    if (line != nullptr || powder != nullptr) {
        const Sale* sale = shop.find(line != nullptr ? line->head : powder->head);
        const bool somebody = sale != nullptr && (says_something(sale->buyer) || says_something(sale->order_number));
        return somebody ? Heap::reachable : Heap::out_of_reach;
    }
    if (const auto* loss = fact_at<Loss>(shop, by))
        return loss->reason == LossReason::given || loss->reason == LossReason::sample ? Heap::out_of_reach
                                                                                       : Heap::gone;
    if (fact_at<FairLine>(shop, by) != nullptr || fact_at<OutSettled>(shop, by) != nullptr) return Heap::out_of_reach;
    return Heap::gone;
}

class Recalling {
public:
    Recalling(const Shop& shop, const Ledger& ledger, std::vector<Account> of) : shop_{shop}, ledger_{ledger} {
        found_.of = std::move(of);
        const auto booked = goods_moved(ledger);
        const auto possible = possible_moves(shop, ledger, booked);  // both in the order of the books
        moves_.reserve(booked.size() + possible.size());
        std::ranges::merge(
            booked, possible, std::back_inserter(moves_), {}, &GoodsMove::movement, &GoodsMove::movement);
    }

    Recall take() {
        const Followed forward = Followed::forward(ledger_, moves_, found_.of);
        add_holders(forward);
        add_here(forward);
        add_out(forward);
        add_is_in(Followed::backward(ledger_, moves_, found_.of));
        add_came_back(forward);
        add_others_out(forward);
        std::ranges::stable_sort(found_.whereabouts, [](const Whereabouts& a, const Whereabouts& b) {
            return std::tuple{a.heap, a.known, a.day} < std::tuple{b.heap, b.known, b.day};
        });
        std::ranges::stable_sort(found_.is_in, {}, &IsIn::known);
        return std::move(found_);
    }

private:
    bool is_lot(Account account) const { return ledger_.accounts.kind(account) == AccountKind::lot; }
    Day day_of(const GoodsMove& move) const { return ledger_.movements[move.movement].on(); }
    const Material* material(Account lot) const {
        return shop_.find(shop_.all<Lot>()[ledger_.accounts.index(lot)].material);
    }
    bool is_bars(Account account) const {
        const Material* of = is_lot(account) ? material(account) : nullptr;
        return of != nullptr && of->kind == MaterialKind::bar;
    }

    // When something is first on record as made, sown, steeped or poured; nothing: not by the books' day.
    std::optional<Day> began(Account account) const {
        const std::uint32_t index = ledger_.accounts.index(account);
        const auto by_now = [&](Day day) { return day <= ledger_.as_of ? std::optional{day} : std::nullopt; };
        switch (ledger_.accounts.kind(account)) {
            case AccountKind::lot: return ledger_.lots[index].made;
            case AccountKind::planting: return by_now(shop_.all<Planting>()[index].sown);
            case AccountKind::vat: return by_now(shop_.all<Vat>()[index].date);
            case AccountKind::batch: return by_now(shop_.all<Batch>()[index].date);
            case AccountKind::boundary:
            case AccountKind::out:
            case AccountKind::pool: break;
        }
        return std::nullopt;
    }

    void add_holders(const Followed& forward) {
        std::set<Account> told(found_.of.begin(), found_.of.end());
        for (const GoodsMove& move : moves_) {
            const AccountKind kind = ledger_.accounts.kind(move.to);
            if (kind == AccountKind::boundary || kind == AccountKind::out || kind == AccountKind::pool) continue;
            if (!forward.step(move) || !told.insert(move.to).second) continue;
            found_.holds.push_back({move.to, *forward.at(move.to), day_of(move)});
        }
    }

    // Of a bed, vat or batch: nothing was cut, dried or closed yet.
    bool not_made_up(Account account) const {
        const std::uint32_t index = ledger_.accounts.index(account);
        const auto none = [&](const auto& all, auto is_it) {
            return std::ranges::none_of(
                all, [&](const auto& each) { return each.date <= ledger_.as_of && is_it(each); });
        };
        switch (ledger_.accounts.kind(account)) {
            case AccountKind::planting:
                return none(shop_.all<PlantingEnd>(),
                            [&](const auto& end) { return end.planting == shop_.all<Planting>()[index].key; });
            case AccountKind::vat: {
                const LinesOf<DryingVat> joined{shop_};
                return none(shop_.all<Drying>(), [&](const Drying& drying) {
                    return std::ranges::any_of(joined(drying.key), [&](const DryingVat* line) {
                        return line->vat == shop_.all<Vat>()[index].key;
                    });
                });
            }
            case AccountKind::batch:
                return none(
                    shop_.all<Cut>(), [&](const Cut& cut) { return cut.batch == shop_.all<Batch>()[index].key; });
            case AccountKind::boundary:
            case AccountKind::lot:
            case AccountKind::out:
            case AccountKind::pool: break;
        }
        return false;
    }

    void add_here(const Followed& forward) {
        const Holds held = holds(shop_, ledger_);
        for (Account each = kBoundaries; each < ledger_.accounts.end; ++each) {
            const auto known = forward.at(each);
            const auto since = began(each);
            if (!known || !since) continue;
            const std::uint32_t index = ledger_.accounts.index(each);
            Whereabouts here{Heap::here, *known, each, 0, *since, std::nullopt, std::nullopt};
            if (is_lot(each)) {
                here.quantity = ledger_.lots[index].left;
                here.held = held.why(index, ledger_.as_of);
            }
            if (here.quantity > 0 || not_made_up(each)) found_.whereabouts.push_back(here);
        }
    }

    // What left the shelf for good, or stands at somebody's shop.
    void add_out(const Followed& forward) {
        std::map<std::pair<Account, Account>, Whereabouts> at_shops;  // by heap of bars out, and their lot
        for (const GoodsMove& move : moves_) {
            const auto known = forward.step(move);
            const bool into_out = ledger_.accounts.kind(move.to) == AccountKind::out;
            const bool out_of = ledger_.accounts.kind(move.from) == AccountKind::out;
            if (!known || move.quantity == 0) continue;
            if (into_out) {
                const OutAtShop& out = shop_.all<OutAtShop>()[ledger_.accounts.index(move.to)];
                Whereabouts& there = at_shops[{move.to, move.of}];
                there = {Heap::reachable, std::max(there.known, *known),
                         move.of,         there.quantity + move.quantity,
                         day_of(move),    ref(out),
                         std::nullopt};
                continue;
            }
            if (out_of) at_shops[{move.from, move.of}].quantity -= move.quantity;
            if (move.to >= kBoundaries) continue;
            const FactRef by = ledger_.sources[ledger_.movements[move.movement].source].fact;
            found_.whereabouts.push_back(
                {heap_of(shop_, by), *known, move.of, move.quantity, day_of(move), by, std::nullopt});
        }
        for (const auto& [place, there] : at_shops)
            if (there.quantity > 0) found_.whereabouts.push_back(there);
    }

    void add_is_in(const Followed& backward) {
        std::map<Account, std::int64_t> quantities;
        for (const GoodsMove& move : moves_)
            if (is_lot(move.of) && backward.step(move)) quantities[move.of] += move.quantity;
        for (const auto& [lot, quantity] : quantities) {
            const bool itself = std::ranges::find(found_.of, lot) != found_.of.end();
            const auto known = backward.at(lot);
            if (!itself && known) found_.is_in.push_back({lot, *known, quantity, came_by(lot)});
        }
        for (const Account each : found_.of)
            if (is_lot(each))
                if (const auto came = came_by(each)) found_.is_in.push_back({each, Known::named, 0, came});
    }

    std::optional<FactRef> came_by(Account lot) const {
        const Key<Lot> key = shop_.all<Lot>()[ledger_.accounts.index(lot)].key;
        for (const DeliveryLine& line : shop_.all<DeliveryLine>()) {
            const Delivery* delivery = line.lot == key ? shop_.find(line.head) : nullptr;
            if (delivery != nullptr && delivery->date <= ledger_.as_of) return ref(line);
        }
        for (const AlreadyHere& fact : shop_.all<AlreadyHere>())
            if (fact.lot == key && fact.date <= ledger_.as_of) return ref(fact);
        return std::nullopt;
    }

    void add_came_back(const Followed& forward) {
        for (const Movement& movement : ledger_.movements)
            if (movement.from == account(Boundary::sold) && movement.quantity > 0 && is_bars(movement.to) &&
                forward.at(movement.to))
                found_.came_back += movement.quantity;
    }

    // Sales by rule of another lot of a kind, on days when one that holds some was on the shelf too.
    void add_others_out(const Followed& forward) {
        struct Affected {
            Key<Material> bar;
            Day from{};
            Day until{};
        };
        std::vector<Day> last(ledger_.lots.size());
        for (const GoodsMove& move : moves_)
            if (is_lot(move.of) && move.from == move.of) last[ledger_.accounts.index(move.of)] = day_of(move);
        std::vector<Affected> affected;
        for (Account lot = ledger_.accounts.lots; lot < ledger_.accounts.plantings; ++lot) {
            const LotState& state = ledger_.lots[ledger_.accounts.index(lot)];
            if (!is_bars(lot) || !forward.at(lot) || !state.made) continue;
            affected.push_back(
                {material(lot)->key, *state.made, state.left > 0 ? ledger_.as_of : last[ledger_.accounts.index(lot)]});
        }
        for (const GoodsMove& move : moves_) {
            const bool goes_out = move.to < kBoundaries || ledger_.accounts.kind(move.to) == AccountKind::out;
            if (!goes_out || move.known != Known::by_rule || move.from != move.of || !is_bars(move.of)) continue;
            if (forward.at(move.of)) continue;
            const Key<Material> bar = material(move.of)->key;
            const Day day = day_of(move);
            if (std::ranges::any_of(affected, [&](const Affected& each) {
                    return each.bar == bar && each.from <= day && day <= each.until;
                }))
                found_.others_out += move.quantity;
        }
    }

    const Shop& shop_;
    const Ledger& ledger_;
    std::vector<GoodsMove> moves_;
    Recall found_;
};

}  // namespace

std::int64_t Recall::bars(const Shop& shop, const Ledger& ledger, Heap heap, Known known) const {
    std::int64_t all = 0;
    for (const Whereabouts& each : whereabouts) {
        if (each.heap != heap || each.known != known) continue;
        if (ledger.accounts.kind(each.of) != AccountKind::lot) continue;
        const Material* made = shop.find(shop.all<Lot>()[ledger.accounts.index(each.of)].material);
        if (made != nullptr && made->kind == MaterialKind::bar) all += each.quantity;
    }
    return all;
}

Recall recall(const Shop& shop, const Ledger& ledger, std::vector<Account> of) {
    return Recalling{shop, ledger, std::move(of)}.take();
}

}  // namespace dyestead
