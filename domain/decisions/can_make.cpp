#include "domain/decisions/can_make.h"

#include <algorithm>
#include <tuple>

namespace dyestead {
namespace {

struct OnShelf {
    std::size_t lot = 0;
    std::int64_t left = 0;
    bool opened = false;
    Day best_before = Day::max();
    Day made{};
};

std::vector<OnShelf> shelf(const Records& records, const std::vector<std::size_t>& there, Key<Material> material) {
    std::vector<OnShelf> lots;
    for (const std::size_t i : there) {
        const LotState& state = records.ledger.lots[i];
        if (records.shop.all<Lot>()[i].material != material) continue;
        lots.push_back({i, state.left, state.left < state.received, state.best_before.value_or(Day::max()),
                        state.made.value_or(Day{})});
    }
    std::ranges::sort(lots, [](const OnShelf& a, const OnShelf& b) {
        return std::tuple{!a.opened, a.best_before, a.made, a.lot} <
               std::tuple{!b.opened, b.best_before, b.made, b.lot};
    });
    return lots;
}

Ingredient ingredient(const Shop& shop, const std::vector<OnShelf>& lots, const Holds& holds, const Need& need,
                      Day day) {
    Ingredient result{need.material, need.quantity, 0, 0, 0, {}};
    std::int64_t wanted = need.quantity;
    for (const OnShelf& each : lots) {
        if (each.best_before < day) {
            result.past_date += each.left;
            continue;
        }
        if (holds.why(static_cast<std::uint32_t>(each.lot), day)) {
            result.held += each.left;
            continue;
        }
        result.there += each.left;
        const std::int64_t taken = std::min(wanted, each.left);
        if (taken > 0) result.take.push_back({shop.all<Lot>()[each.lot].key, taken});
        wanted -= taken;
    }
    return result;
}

}  // namespace

CanMake can_make(const Shop& shop, const Ledger& ledger, Key<Material> bar, int loaves, Day day) {
    return can_make({shop, ledger}, holds(shop, ledger), bar, loaves, day);
}

CanMake can_make(const Records& records, const Holds& held, Key<Material> bar, int loaves, Day day) {
    CanMake result;
    result.loaves = std::max(loaves, 0);
    std::vector<std::size_t> there;  // places of the lots of which some is left
    for (std::size_t i = 0; i < records.ledger.lots.size(); ++i)
        if (records.ledger.lots[i].left > 0) there.push_back(i);
    const auto stand = [&](const Need& need) {
        return ingredient(records.shop, shelf(records, there, need.material), held, need, day);
    };
    const LoafNeeds one = loaf_needs(records, bar, 1);
    result.loaf = loaf_needs(records, bar, result.loaves);
    for (const Need& need : result.loaf.needs) result.ingredients.push_back(stand(need));

    std::optional<std::int64_t> most;
    for (const Need& need : one.needs) {
        if (need.quantity <= 0) continue;
        const std::int64_t enough_for = stand(need).there / need.quantity;
        if (most && enough_for >= *most) continue;
        most = enough_for;
        result.runs_out = need.material;
    }
    constexpr std::int64_t kMost = 1'000'000;
    result.most_loaves = static_cast<int>(std::min(most.value_or(0), kMost));
    return result;
}

}  // namespace dyestead
