#include "domain/ledger/holds.h"

#include <algorithm>

#include "domain/ledger/lye.h"

namespace dyestead {
namespace {

constexpr Ratio kDoubt{2, 100};
constexpr std::int64_t kDoubtPerLoaf = 2'000;  // milligrams

std::optional<HeldFor> by_lye(const LyeChecks& checks, const Batch& batch) {
    try {
        const LyeCheck check = checks.of(batch);
        if (!check.difference || !check.as_sodium || check.as_sodium->is_zero()) return std::nullopt;
        const auto& cautions = check.called_for.cautions;
        const std::int64_t called = check.called_for.as_sodium.in_base();
        const std::int64_t off = check.as_sodium->in_base() - called;
        const std::int64_t doubt =
            std::max(times(called, kDoubt), kDoubtPerLoaf * std::max<std::int64_t>(1, batch.loaves));
        if (std::ranges::find(cautions, LyeCaution::no_superfat) != cautions.end()) return HeldFor::no_superfat;
        if (off > doubt || -off > doubt) return HeldFor::lye_off;
    } catch (const Overflow&) {
        // Far outside any soap: nothing can be said.
    }
    return std::nullopt;
}

}  // namespace

Holds::Holds(const Shop& shop) : plan_{account_plan(shop)} {
    const auto lot = [&](Key<Lot> key) -> std::optional<Account> {
        const Lot* found = shop.find(key);
        if (found == nullptr) return std::nullopt;
        return plan_.lots + static_cast<Account>(found - shop.all<Lot>().data());
    };
    for (const Hold& hold : shop.all<Hold>())
        if (const auto at = lot(hold.lot))
            held_[*at].push_back({HeldFor::hold, ref(hold), hold.date, plan_.index(*at)});
    for (const Release& release : shop.all<Release>())
        if (const auto at = lot(release.lot)) released_[*at].push_back(release.date);
    const LyeChecks checks{shop};
    for (std::size_t i = 0; i < shop.all<Batch>().size(); ++i) {
        const Batch& batch = shop.all<Batch>()[i];
        if (const auto why = by_lye(checks, batch))
            held_[plan_.batches + static_cast<Account>(i)].push_back({*why, ref(batch), batch.date, 0});
    }
    for (const auto& [account, reasons] : held_) touched_.insert(account);
}

void Holds::went_into(Account from, Account to, Day day) {
    if (held_.empty()) return;  // nothing is held, so nothing will be
    auto& steps = came_from_[to];
    const bool known = std::ranges::any_of(steps, [&](const Step& step) { return step.from == from; });
    if (known || from == to) return;
    steps.push_back({from, day});
    goes_into_[from].push_back(to);
    if (touched_.contains(from)) touch(to);
}

void Holds::touch(Account account) {
    if (!touched_.insert(account).second) return;
    const auto further = goes_into_.find(account);
    if (further == goes_into_.end()) return;
    for (const Account each : further->second) touch(each);
}

std::optional<Held> Holds::why(std::uint32_t lot, Day day) const {
    if (!touched_.contains(plan_.lots + lot)) return std::nullopt;
    std::vector<Account> on_the_way;
    const auto found = reasons(plan_.lots + lot, day, on_the_way);
    if (found.empty()) return std::nullopt;
    Held latest = *std::ranges::max_element(found, {}, &Held::since);
    if (latest.why != HeldFor::hold) latest.at = lot;
    return latest;
}

// A reason reaches a lot on the day it arose, or on the day what it sticks to went into the lot.
std::vector<Held> Holds::reasons(Account account, Day day, std::vector<Account>& on_the_way) const {
    std::vector<Held> found;
    if (std::ranges::find(on_the_way, account) != on_the_way.end()) return found;
    on_the_way.push_back(account);
    if (const auto own = held_.find(account); own != held_.end())
        for (const Held& held : own->second)
            if (held.since <= day) found.push_back(held);
    if (const auto steps = came_from_.find(account); steps != came_from_.end())
        for (const Step& step : steps->second) {
            if (step.day > day) continue;
            for (Held held : reasons(step.from, day, on_the_way)) {
                held.since = std::max(held.since, step.day);
                found.push_back(held);
            }
        }
    on_the_way.pop_back();
    if (const auto released = released_.find(account); released != released_.end())
        std::erase_if(found, [&](const Held& held) {
            return std::ranges::any_of(
                released->second, [&](Day release) { return held.since <= release && release <= day; });
        });
    return found;
}

Holds holds(const Shop& shop, const Ledger& ledger) {
    Holds all{shop};
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
