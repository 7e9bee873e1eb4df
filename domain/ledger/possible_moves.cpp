#include <algorithm>
#include <map>
#include <numeric>

#include "domain/ledger/goods_moved.h"

namespace dyestead {
namespace {

// When there was some of a lot on the shelf, by the books.
struct OnShelf {
    Account lot = 0;
    Day from{};
    std::optional<Day> last_taken{};
    bool gone = false;

    bool on(Day day) const { return from <= day && (!gone || (last_taken && *last_taken >= day)); }
    bool ran_out_before(Day day) const { return from <= day && gone && last_taken && *last_taken <= day; }
};

// The lots of one material, asked day after day which of them are on the shelf: those gone by then are not looked at
// again.
class Shelf {
public:
    void add(OnShelf lot) { lots_.push_back(lot); }
    const std::vector<OnShelf>& all() const { return lots_; }

    // In the order they were added.
    const std::vector<std::size_t>& on(Day day) {
        if (waiting_.size() != lots_.size()) begin();
        if (day < day_) begin();
        day_ = day;
        while (next_ < waiting_.size() && lots_[waiting_[next_]].from <= day) {
            const std::size_t at = waiting_[next_++];
            open_.insert(std::ranges::upper_bound(open_, at), at);
        }
        std::erase_if(open_, [&](std::size_t at) { return !lots_[at].on(day); });
        return open_;
    }

private:
    void begin() {
        waiting_.resize(lots_.size());
        std::iota(waiting_.begin(), waiting_.end(), std::size_t{0});
        std::ranges::stable_sort(waiting_, {}, [&](std::size_t at) { return lots_[at].from; });
        next_ = 0;
        open_.clear();
    }

    std::vector<OnShelf> lots_;
    std::vector<std::size_t> waiting_;  // places, by the day they come on the shelf
    std::size_t next_ = 0;              // of these, the first that was not there yet
    std::vector<std::size_t> open_;
    Day day_ = Day::min();
};

using Shelves = std::map<std::uint32_t, Shelf>;  // by material

Shelves shelves(const Shop& shop, const Ledger& ledger) {
    std::vector<std::optional<Day>> last(ledger.lots.size());
    for (const Movement& movement : ledger.movements)
        if (movement.quantity != 0 && ledger.accounts.kind(movement.from) == AccountKind::lot)
            last[ledger.accounts.index(movement.from)] = movement.on();
    Shelves all;
    for (std::uint32_t lot = 0; lot < ledger.lots.size(); ++lot) {
        const Material* material = shop.find(shop.all<Lot>()[lot].material);
        const LotState& state = ledger.lots[lot];
        if (material == nullptr || !state.made) continue;
        all[static_cast<std::uint32_t>(material - shop.all<Material>().data())].add(
            {ledger.accounts.lots + lot, *state.made, last[lot], state.left == 0});
    }
    return all;
}

template <class Use>
bool name_lot(const Shop& shop, FactRef fact, std::optional<Key<Lot>>& lot) {
    if (fact.kind != kKindOf<Use>) return false;
    if (const Use* use = shop.find(Key<Use>{fact.key})) lot = use->lot;
    return true;
}

// The lot the maker named for a use in a bed, vat, batch or wrapping.
const Lot* named_lot(const Shop& shop, FactRef fact) {
    std::optional<Key<Lot>> lot;
    if (!name_lot<BatchUse>(shop, fact, lot) && !name_lot<VatUse>(shop, fact, lot) &&
        !name_lot<PlantingUse>(shop, fact, lot) && !name_lot<TendingUse>(shop, fact, lot))
        name_lot<WrappingUse>(shop, fact, lot);
    return lot ? shop.find(*lot) : nullptr;
}

class Possible {
public:
    Possible(const Shop& shop, const Ledger& ledger) : shop_{shop}, ledger_{ledger}, shelves_{shelves(shop, ledger)} {}

    void add(const GoodsMove& move) {
        if (move.known != Known::by_rule || !is_use(move)) return;
        const Movement& movement = ledger_.movements[move.movement];
        const Source& source = ledger_.sources[movement.source];
        const bool short_of_it = movement.from == account(Boundary::provisional);
        if (const Lot* named = short_of_it ? named_lot(shop_, source.fact) : nullptr) {
            const auto at = static_cast<Account>(named - shop_.all<Lot>().data());
            return add(move, ledger_.accounts.lots + at, Known::named);
        }
        const auto found = shelves_.find(source.material);
        if (found == shelves_.end()) return;
        const std::vector<OnShelf>& lots = found->second.all();
        for (const std::size_t at : found->second.on(movement.on()))
            if (lots[at].lot != move.from) add(move, lots[at].lot, Known::could_be);
        if (!short_of_it) return;
        const OnShelf* latest = nullptr;
        for (const OnShelf& lot : lots)
            if (lot.ran_out_before(movement.on()) && (latest == nullptr || *latest->last_taken < *lot.last_taken))
                latest = &lot;
        if (latest != nullptr && latest->lot != move.from && !latest->on(movement.on()))
            add(move, latest->lot, Known::could_be);
    }

    std::vector<GoodsMove> take() { return std::move(all_); }

private:
    bool is_use(const GoodsMove& move) const {
        if (move.quantity == 0) return false;
        switch (ledger_.accounts.kind(move.to)) {
            case AccountKind::lot:
            case AccountKind::planting:
            case AccountKind::vat:
            case AccountKind::batch: return move.from == move.of;
            case AccountKind::boundary:
            case AccountKind::out:
            case AccountKind::pool: return false;
        }
        return false;
    }
    // A lot that is named counts though the books have it made later.
    void add(const GoodsMove& move, Account lot, Known known) {
        const auto last = static_cast<std::uint32_t>(ledger_.movements.size());
        const std::uint32_t settled = known == Known::named ? last : move.movement;
        all_.push_back({move.movement, settled, lot, lot, move.to, move.quantity, known});
    }

    const Shop& shop_;
    const Ledger& ledger_;
    Shelves shelves_;
    std::vector<GoodsMove> all_;
};

}  // namespace

std::vector<GoodsMove> possible_moves(const Shop& shop, const Ledger& ledger, const std::vector<GoodsMove>& moves) {
    Possible possible{shop, ledger};
    for (const GoodsMove& move : moves) possible.add(move);
    return possible.take();
}

}  // namespace dyestead
