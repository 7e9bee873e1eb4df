// Counts and the moving average, for every shop there can be.
#include <algorithm>

#include <doctest/doctest.h>

#include "domain/facts/material_amount.h"
#include "domain/ledger/replay.h"
#include "tests/support/any_act.h"

using namespace dyestead;
using test::Act;
using test::kFirstDay;

namespace {

constexpr Day kEnd = kFirstDay + Days{test::kDays + 400};
constexpr std::int64_t kNewKey = 800'000'000;

bool below_nought(const Cost& cost) {
    return cost.materials < Money{} || cost.labour < Money{} || cost.energy < Money{} || cost.overhead < Money{} ||
           cost.hands_on < Minutes{};
}

void average_from_the_start(Shop& shop) {
    shop.all<CostRule>().clear();
    CostRule rule;
    rule.key.number = kNewKey;
    rule.code = "average";
    rule.from = kFirstDay;
    rule.cost_by = CostBy::average;
    shop.all<CostRule>().push_back(rule);
}

std::vector<std::pair<std::int64_t, Cost>> numbers(const Ledger& ledger) {
    std::vector<std::pair<std::int64_t, Cost>> numbers;
    for (const Movement& movement : ledger.movements) numbers.emplace_back(movement.quantity, movement.cost);
    return numbers;
}

Amount held(const Material& material, std::int64_t base) {
    switch (material.held_as) {
        case HeldAs::mass: return {Quantity{Kind::mass, base}, Unit::mg, Mark::measured};
        case HeldAs::volume: return {Quantity{Kind::volume, base}, Unit::ml, Mark::measured};
        case HeldAs::count: return {Quantity{Kind::count, base}, Unit::piece, Mark::measured};
    }
    return {};
}

// A count at the end of a day of all that the books hold then, lot by lot or of each material together.
Shop counted_as_booked(Shop shop, Day day, bool by_lot) {
    const Ledger ledger = replay(shop, day);
    Count count;
    count.key.number = kNewKey;
    count.code = "as booked";
    count.date = day;
    shop.all<Count>().push_back(count);
    const auto add = [&](const Material& material, std::optional<Key<Lot>> lot, std::int64_t base) {
        CountLine line;
        line.position = static_cast<int>(shop.all<CountLine>().size()) + 1;
        line.key.number = kNewKey + line.position;
        line.head = count.key;
        line.material = material.key;
        line.lot = lot;
        line.counted = held(material, base);
        shop.all<CountLine>().push_back(line);
    };
    for (const Material& material : shop.all<Material>()) {
        std::int64_t sum = 0;
        for (std::size_t lot = 0; lot < ledger.lots.size(); ++lot) {
            if (shop.all<Lot>()[lot].material != material.key) continue;
            sum += ledger.lots[lot].left;
            if (by_lot) add(material, shop.all<Lot>()[lot].key, ledger.lots[lot].left);
        }
        if (!by_lot) add(material, std::nullopt, sum);
    }
    return shop;
}

}  // namespace

TEST_CASE("under the moving average with named lots no lot and no pool ever goes below nought") {
    CHECK(rc::check([](const std::vector<Act>& acts, bool from_the_start) {
        Shop shop = test::random_shop(acts);
        if (from_the_start) average_from_the_start(shop);
        const Ledger ledger = replay(shop, kEnd);
        std::vector<Cost> held(ledger.accounts.end);
        std::vector<std::int64_t> left(ledger.lots.size());
        for (const Movement& movement : ledger.movements) {
            held[movement.from] -= movement.cost;
            held[movement.to] += movement.cost;
            const AccountKind kind = ledger.accounts.kind(movement.from);
            if (kind == AccountKind::lot) {
                RC_ASSERT((left[ledger.accounts.index(movement.from)] -= movement.quantity) >= 0);
                // Settling a shortfall takes out what it was taken at and puts back the rest in a second step.
                if (movement.to == account(Boundary::provisional)) continue;
            }
            if (kind == AccountKind::pool && movement.to == account(Boundary::provisional)) continue;
            if (kind == AccountKind::lot || kind == AccountKind::pool) RC_ASSERT(!below_nought(held[movement.from]));
            if (ledger.accounts.kind(movement.to) != AccountKind::lot) continue;
            const std::uint32_t to = ledger.accounts.index(movement.to);
            if (ledger.accounts.kind(movement.from) == AccountKind::lot || movement.quantity == 0) continue;
            left[to] += movement.quantity;
        }
        for (const Material& material : shop.all<Material>()) {
            const auto place = static_cast<std::size_t>(&material - shop.all<Material>().data());
            std::int64_t goods = 0;
            for (std::size_t lot = 0; lot < ledger.lots.size(); ++lot)
                if (shop.all<Lot>()[lot].material == material.key) goods += ledger.lots[lot].left;
            RC_ASSERT(goods > 0 || ledger.balances[ledger.accounts.pools + place].is_zero());
        }
    }));
}

TEST_CASE("counting what the books say changes nothing") {
    CHECK(rc::check([](const std::vector<Act>& acts, bool by_lot) {
        const Shop shop = test::random_shop(acts);
        const Day day = kFirstDay + Days{*rc::gen::inRange(0, test::kDays + 50)};
        // Of two counts on one day the first says what the second finds.
        if (std::ranges::find(shop.all<Count>(), day, &Count::date) != shop.all<Count>().end()) return;
        const Shop counted = counted_as_booked(shop, day, by_lot);
        RC_ASSERT(numbers(replay(counted, kEnd)) == numbers(replay(shop, kEnd)));
    }));
}

TEST_CASE("after a count the books hold what was counted") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        if (shop.all<Count>().empty()) return;
        // The last count of all, where no other is of its day.
        const Count* last = &shop.all<Count>().front();
        for (const Count& each : shop.all<Count>())
            if (each.date > last->date) last = &each;
        for (const Count& each : shop.all<Count>()) RC_PRE(each.key == last->key || each.date != last->date);
        const Ledger ledger = replay(shop, last->date);
        for (const Finding& each : ledger.findings)
            RC_PRE(each.day != last->date ||
                   (each.code != FindingCode::counted_twice && each.code != FindingCode::found_without_lot));
        for (const CountLine& line : shop.all<CountLine>()) {
            if (line.head != last->key || !line.counted || line.lot) continue;
            const auto base = as_held(*shop.find(line.material), *line.counted)->in_base();
            std::int64_t goods = 0;
            for (std::size_t lot = 0; lot < ledger.lots.size(); ++lot)
                if (shop.all<Lot>()[lot].material == line.material) goods += ledger.lots[lot].left;
            RC_ASSERT(goods == base);
        }
    }));
}
