#include "domain/ledger/holds.h"

#include <algorithm>
#include <map>

#include "domain/ledger/lye.h"

namespace dyestead {
namespace {

constexpr Ratio kDoubt{2, 100};
constexpr std::int64_t kDoubtPerLoaf = 2'000;  // milligrams

std::optional<HeldFor> held_by_lye(const LyeChecks& checks, const Batch& batch) {
    try {
        const auto balance = checks.balance(batch);
        if (!balance) return std::nullopt;
        const std::int64_t called = balance->called_for.in_base();
        const std::int64_t off = balance->weighed.in_base() - called;
        const std::int64_t doubt =
            std::max(times(called, kDoubt), kDoubtPerLoaf * std::max<std::int64_t>(1, batch.loaves));
        if (!balance->leaves_oil) return HeldFor::no_superfat;
        if (off > doubt || -off > doubt) return HeldFor::lye_off;
    } catch (const Overflow&) {
        // Far outside any soap: nothing can be said.
    }
    return std::nullopt;
}

// Batch after batch of the shop. Most are weighed like the one of their kind before, which answers for them too.
class ByLye {
public:
    explicit ByLye(const Shop& shop) : checks_{shop} {}

    std::optional<HeldFor> operator()(const Batch& batch) {
        Answer& last = last_[{batch.recipe, batch.bar}];
        const bool known =
            last.batch != nullptr && last.batch->loaves == batch.loaves && checks_.are_alike(*last.batch, batch);
        if (!known) last = {&batch, held_by_lye(checks_, batch)};
        return last.why;
    }

private:
    struct Answer {
        const Batch* batch = nullptr;
        std::optional<HeldFor> why{};
    };
    LyeChecks checks_;
    std::map<std::pair<Key<Recipe>, Key<Material>>, Answer> last_;
};

}  // namespace

Holds::Holds(const Shop& shop) : plan_{account_plan(shop)}, last_(plan_.end, kNone), places_(plan_.end, kNone) {
    const auto lot = [&](Key<Lot> key) -> std::optional<Account> {
        const Lot* found = shop.find(key);
        if (found == nullptr) return std::nullopt;
        return plan_.lots + static_cast<Account>(found - shop.all<Lot>().data());
    };
    for (const Hold& hold : shop.all<Hold>())
        if (const auto at = lot(hold.lot))
            touch(*at).held.push_back({HeldFor::hold, ref(hold), hold.date, plan_.index(*at)});
    for (const Release& release : shop.all<Release>())
        if (const auto at = lot(release.lot)) released_[*at].push_back(release.date);
    ByLye by_lye{shop};
    for (std::size_t i = 0; i < shop.all<Batch>().size(); ++i) {
        const Batch& batch = shop.all<Batch>()[i];
        if (const auto why = by_lye(batch))
            touch(plan_.batches + static_cast<Account>(i)).held.push_back({*why, ref(batch), batch.date, 0});
    }
}

void Holds::went_into(Account from, Account to, Day day) {
    if (none() || from == to) return;
    const auto step = static_cast<std::uint32_t>(steps_.size());
    steps_.push_back({from, to, day, last_[from]});
    last_[from] = step;
    if (is_touched(from)) carry(step);
}

// All that it went into before is touched with it.
Holds::Touched& Holds::touch(Account account) {
    if (!is_touched(account)) {
        places_[account] = static_cast<std::uint32_t>(touched_.size());
        touched_.emplace_back();
        std::vector<std::uint32_t> steps;
        for (std::uint32_t step = last_[account]; step != kNone; step = steps_[step].before) steps.push_back(step);
        for (auto step = steps.rbegin(); step != steps.rend(); ++step) carry(*step);
    }
    return touched_[places_[account]];
}

// Only the first step from one to the other counts.
void Holds::carry(std::uint32_t step) {
    auto& came_from = touch(steps_[step].to).came_from;
    const auto same = [&](std::uint32_t each) { return steps_[each].from == steps_[step].from; };
    if (std::ranges::none_of(came_from, same)) came_from.insert(std::ranges::upper_bound(came_from, step), step);
}

std::optional<Held> Holds::why(std::uint32_t lot, Day day) const {
    std::optional<Held> latest;
    find_latest({plan_.lots + lot, {}, nullptr}, day, latest);
    if (latest && latest->why != HeldFor::hold) latest->at = lot;
    return latest;
}

void Holds::find_latest(const Way& way, Day day, std::optional<Held>& latest) const {
    if (!is_touched(way.account)) return;
    const Touched& here = touched_[places_[way.account]];
    for (const Held& held : here.held) {
        const auto reached = held.since <= day ? carried(held, way, day) : std::nullopt;
        if (reached && (!latest || latest->since < reached->since)) latest = reached;
    }
    for (const std::uint32_t each : here.came_from) {
        const Step& step = steps_[each];
        bool in_a_ring = false;
        for (const Way* on = &way; on != nullptr; on = on->further) in_a_ring = in_a_ring || on->account == step.from;
        if (step.day <= day && !in_a_ring) find_latest({step.from, step.day, &way}, day, latest);
    }
}

// A reason reaches a lot on the day it arose, or on the day what it sticks to went into the lot. Nothing where it was
// released on the way.
std::optional<Held> Holds::carried(Held held, const Way& way, Day day) const {
    for (const Way* at = &way; at != nullptr; at = at->further) {
        const auto released = released_.find(at->account);
        const auto lifts = [&](Day release) { return held.since <= release && release <= day; };
        if (released != released_.end() && std::ranges::any_of(released->second, lifts)) return std::nullopt;
        if (at->further != nullptr) held.since = std::max(held.since, at->day);
    }
    return held;
}

Holds holds(const Shop& shop, const Ledger& ledger) {
    Holds all{shop};
    if (all.none()) return all;
    const auto carries = [&](Account account) {
        switch (ledger.accounts.kind(account)) {
            case AccountKind::lot:
            case AccountKind::vat:
            case AccountKind::batch: return true;
            case AccountKind::boundary:
            case AccountKind::planting:
            case AccountKind::out:
            case AccountKind::pool: return false;
        }
        return false;
    };
    for (const Movement& movement : ledger.movements)
        if (carries(movement.from) && carries(movement.to)) all.went_into(movement.from, movement.to, movement.on());
    return all;
}

}  // namespace dyestead
