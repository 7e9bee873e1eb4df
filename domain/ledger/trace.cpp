#include "domain/ledger/trace.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <map>
#include <tuple>

#include "domain/ledger/in_force.h"

namespace dyestead {
namespace {

constexpr std::size_t kParts = 5;
using Parts = std::array<std::int64_t, kParts>;
using Composition = std::map<std::uint32_t, Parts>;  // by leaf

Parts parts(const Cost& cost) {
    return {cost.materials.in_millionths(), cost.labour.in_millionths(), cost.energy.in_millionths(),
            cost.overhead.in_millionths(), cost.hands_on.in_millionths()};
}

Cost cost_of(const Parts& parts) {
    return {Money::millionths(parts[0]), Money::millionths(parts[1]), Money::millionths(parts[2]),
            Money::millionths(parts[3]), Minutes::millionths(parts[4])};
}

void add(Composition& to, const Composition& what, int sign) {
    for (const auto& [leaf, amounts] : what) {
        Parts& held = to[leaf];
        for (std::size_t i = 0; i < kParts; ++i) held[i] = checked_add(held[i], sign * amounts[i]);
    }
}

// The leaves of one part of an amount that leaves `held`. All that is held: each as it is. Otherwise in
// proportion to their sizes, which for leaves of one sign is a proportion of the whole; where nothing
// of this part is held, the leaf `otherwise` stands for it.
void take(const Composition& held, std::size_t part, std::int64_t amount, std::uint32_t otherwise, Composition& out) {
    if (amount == 0) return;
    Wide total = 0;
    Wide sizes = 0;
    for (const auto& [leaf, amounts] : held) {
        total += amounts[part];
        sizes += amounts[part] < 0 ? -static_cast<Wide>(amounts[part]) : amounts[part];
    }
    if (sizes == 0) {
        out[otherwise][part] += amount;
        return;
    }
    const bool all = total == amount;
    Wide rest = amount;
    for (const auto& [leaf, amounts] : held) {
        if (amounts[part] == 0) continue;
        const Wide size = amounts[part] < 0 ? -static_cast<Wide>(amounts[part]) : amounts[part];
        const Wide given = all ? amounts[part] : rest * size / sizes;
        out[leaf][part] += narrow(given);
        rest -= given;
        sizes -= size;
    }
}

class Tracer {
public:
    Tracer(const Ledger& ledger, const Counts& counts, Period period)
        : ledger_{ledger}, counts_{counts}, period_{period} {}

    std::vector<Leaf> leaves() {
        const std::size_t end = look_back();
        for (std::size_t at = 0; at < end; ++at) post(at);
        std::vector<Leaf> result;
        for (const auto& [leaf, amounts] : found_) {
            Leaf each = leaves_[leaf];
            each.cost = cost_of(amounts);
            if (!each.cost.is_zero()) result.push_back(each);
        }
        return result;
    }

private:
    // What is kept of an account; of a boundary one, of its dealings with each other account by itself,
    // so that bars brought back are the bars of that lot.
    struct Holder {
        std::size_t needed_until = 0;  // place of the last movement out of it that matters, counted from 1
        Composition held;
    };
    using Place = std::pair<Account, Account>;

    static bool is_boundary(Account account) { return account < kBoundaries; }
    static bool comes_in(Account account) {
        return is_boundary(account) && term_of(static_cast<Boundary>(account)) == Term::in;
    }
    static Place from_place(const Movement& movement) {
        return {movement.from, is_boundary(movement.from) ? movement.to : 0};
    }
    static Place to_place(const Movement& movement) {
        return {movement.to, is_boundary(movement.to) ? movement.from : 0};
    }

    int asked_for(const Movement& movement) const { return period_.contains(movement.on()) ? counts_(movement) : 0; }

    // From the last movement to the first: which accounts feed the figure, and until when.
    std::size_t look_back() {
        std::size_t end = 0;
        while (end < ledger_.movements.size() && ledger_.movements[end].on() <= period_.last) ++end;
        for (std::size_t at = end; at > 0; --at) {
            const Movement& movement = ledger_.movements[at - 1];
            if (asked_for(movement) == 0 && !holders_.contains(to_place(movement))) continue;
            if (!comes_in(movement.from)) holders_.try_emplace(from_place(movement), Holder{at, {}});
        }
        return end;
    }

    Holder* holder(const Place& place, std::size_t at) {
        const auto found = holders_.find(place);
        return found != holders_.end() && at < found->second.needed_until ? &found->second : nullptr;
    }

    void post(std::size_t at) {
        const Movement& movement = ledger_.movements[at];
        Holder* from = holder(from_place(movement), at);
        Holder* to = holder(to_place(movement), at);
        const int asked = asked_for(movement);
        if (from == nullptr && to == nullptr && asked == 0) return;
        Composition flow;
        const Parts amounts = parts(movement.cost);
        const std::uint32_t own = leaf_of(movement);
        for (std::size_t part = 0; part < kParts; ++part)
            take(from != nullptr ? from->held : Composition{}, part, amounts[part], own, flow);
        if (from != nullptr) add(from->held, flow, -1);
        if (to != nullptr) add(to->held, flow, 1);
        if (asked != 0) add(found_, flow, asked);
    }

    std::uint32_t leaf_of(const Movement& movement) {
        Boundary through = Boundary::other;
        if (is_boundary(movement.from))
            through = static_cast<Boundary>(movement.from);
        else if (is_boundary(movement.to))
            through = static_cast<Boundary>(movement.to);
        const FactRef fact = ledger_.sources[movement.source].fact;
        const auto number = static_cast<std::uint32_t>(leaves_.size());
        const auto [at, is_new] = numbers_.try_emplace({fact.kind, fact.key, through}, number);
        if (is_new) leaves_.push_back({fact, through, {}});
        return at->second;
    }

    const Ledger& ledger_;
    const Counts& counts_;
    Period period_;
    std::map<Place, Holder> holders_;
    std::vector<Leaf> leaves_;
    std::map<std::tuple<FactKind, std::int64_t, Boundary>, std::uint32_t> numbers_;
    Composition found_;
};

}  // namespace

std::vector<Leaf> accrued(const Shop& shop, Period period) {
    std::vector<Leaf> leaves;
    std::vector<const Overhead*> settings;
    for (const Overhead& each : shop.all<Overhead>()) settings.push_back(&each);
    std::ranges::sort(settings, [](const auto* a, const auto* b) {
        return std::pair{a->from, a->key} < std::pair{b->from, b->key};
    });
    for (std::size_t i = 0; i < settings.size(); ++i) {
        const Day first = std::max(settings[i]->from, period.first);
        const Day next = i + 1 < settings.size() ? settings[i + 1]->from : period.last + Days{1};
        const Day last = std::min(next - Days{1}, period.last);
        if (last < first) continue;
        Leaf leaf{ref(*settings[i]), Boundary::overhead, {}};
        leaf.cost.overhead = running_costs_accrued(shop, last) - running_costs_accrued(shop, first - Days{1});
        if (!leaf.cost.is_zero()) leaves.push_back(leaf);
    }
    for (const Equipment& tool : shop.all<Equipment>()) {
        const bool dye = tool.dye_only != DyeOnly::no;
        Leaf leaf{ref(tool), dye ? Boundary::dye_sunk : Boundary::overhead, {}};
        leaf.cost.overhead = wear_accrued(tool, period.last) - wear_accrued(tool, period.before());
        if (!leaf.cost.is_zero()) leaves.push_back(leaf);
    }
    return leaves;
}

std::vector<Leaf> trace(const Ledger& ledger, const Counts& counts, Period period) {
    return Tracer{ledger, counts, period}.leaves();
}

std::vector<Leaf> trace(const Ledger& ledger, const std::vector<bool>& accounts, Period period) {
    return trace(
        ledger, [&](const Movement& movement) { return int{accounts[movement.to]} - int{accounts[movement.from]}; },
        period);
}

std::vector<Leaf> trace(const Ledger& ledger, Account account, Day day) {
    std::vector<bool> accounts(ledger.accounts.end);
    accounts[account] = true;
    return trace(ledger, accounts, Period::up_to(day));
}

std::vector<Leaf> trace_into(const Ledger& ledger, Account account, Day day) {
    return trace(
        ledger, [&](const Movement& movement) { return movement.to == account && movement.from != account ? 1 : 0; },
        Period::up_to(day));
}

std::vector<Leaf> trace(const Shop& shop, const Ledger& ledger, Term term, Period period) {
    std::vector<bool> accounts(ledger.accounts.end);
    for (Account each = 0; each < ledger.accounts.end; ++each)
        accounts[each] = term_of(shop, ledger, each, period.last) == term;
    std::vector<Leaf> leaves = trace(ledger, accounts, period);
    if (term == Term::in)
        for (Leaf& leaf : leaves) leaf.cost = -leaf.cost;
    if (term == Term::in || term == Term::period) std::ranges::move(accrued(shop, period), std::back_inserter(leaves));
    return leaves;
}

Cost sum(const std::vector<Leaf>& leaves) {
    Cost total;
    for (const Leaf& leaf : leaves) total += leaf.cost;
    return total;
}

}  // namespace dyestead
