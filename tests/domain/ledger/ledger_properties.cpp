// Nothing leaks and nothing looks ahead: the ledger rules that hold for every shop there can be.
#include <algorithm>
#include <random>
#include <tuple>

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "domain/ledger/as_it_stood.h"
#include "domain/ledger/replay.h"
#include "domain/ledger/statements.h"
#include "tests/support/any_act.h"

using namespace dyestead;
using test::Act;
using test::kFirstDay;

namespace {

constexpr Day kEnd = kFirstDay + Days{test::kDays + 400};

// Every day on which something moved, and the day after it.
std::vector<Day> days_of(const Ledger& ledger) {
    std::vector<Day> days{kFirstDay - Days{1}, kEnd};
    for (const Movement& movement : ledger.movements) {
        days.push_back(movement.on());
        days.push_back(movement.on() + Days{1});
    }
    std::ranges::sort(days);
    const auto twice = std::ranges::unique(days);
    days.erase(twice.begin(), twice.end());
    return days;
}

// What the ledger says, without the numbers of accounts and sources.
std::vector<std::pair<std::int64_t, Cost>> numbers(const Ledger& ledger) {
    std::vector<std::pair<std::int64_t, Cost>> numbers;
    for (const Movement& movement : ledger.movements) numbers.emplace_back(movement.quantity, movement.cost);
    return numbers;
}

bool same(const Ledger& a, const Ledger& b) {
    const auto movement = [&](const Movement& one, const Movement& other) {
        const Source& from = a.sources[one.source];
        const Source& other_from = b.sources[other.source];
        return std::tie(one.from, one.to, one.source, one.day, one.quantity, one.cost) ==
                   std::tie(other.from, other.to, other.source, other.day, other.quantity, other.cost) &&
               std::tie(from.fact, from.material, from.named_lot) ==
                   std::tie(other_from.fact, other_from.material, other_from.named_lot);
    };
    const auto finding = [](const Finding& one, const Finding& other) {
        return std::tie(one.code, one.about, one.day, one.args) ==
               std::tie(other.code, other.about, other.day, other.args);
    };
    return a.as_of == b.as_of && std::ranges::equal(a.movements, b.movements, movement) && a.balances == b.balances &&
           std::ranges::equal(a.findings, b.findings, finding);
}

bool same_lot(const LotState& a, const LotState& b) {
    return std::tie(a.made, a.ready, a.best_before, a.received, a.left, a.cost, a.cost_in) ==
           std::tie(b.made, b.ready, b.best_before, b.received, b.left, b.cost, b.cost_in);
}

Minutes minutes_logged(const Shop& shop) {
    const auto is_paid = [&](const std::optional<Key<Person>>& who) {
        return who && std::ranges::any_of(shop.all<Pay>(), [&](const Pay& pay) {
                   return pay.person == *who && pay.standing == Standing::paid;
               });
    };
    Minutes sum;
    const auto add = [&](const std::optional<Key<Person>>& who, const std::optional<Span>& time) {
        if (time && !is_paid(who)) sum += time->time;
    };
    for (const auto& fact : shop.all<StandingBed>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<AlreadyHere>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<Tending>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<Harvest>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<SeedKept>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<VatStep>()) add(fact.who, fact.hands_on);
    const auto by_steps = [&](const Vat& vat) {
        return std::ranges::any_of(
            shop.all<VatStep>(), [&](const VatStep& step) { return step.head == vat.key && step.hands_on; });
    };
    for (const auto& fact : shop.all<Vat>())
        if (!by_steps(fact)) add(fact.who, fact.hands_on);
    for (const auto& fact : shop.all<Drying>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<BatchTime>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<Cut>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<Wrapping>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<FairTime>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<Sale>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<Sitting>()) add(fact.who, fact.time);
    for (const auto& fact : shop.all<Work>()) add(fact.who, fact.time);
    return sum;
}

}  // namespace

TEST_CASE("every penny and minute stands in one term, at the end of every day") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        for (const Day day : days_of(ledger)) {
            const CostPartition terms = cost_partition(shop, ledger, day);
            RC_ASSERT(terms.in == terms.out());
        }
    }));
}

TEST_CASE("every account holds what its movements brought, and every lot the balance of its account") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        std::vector<Cost> held(ledger.accounts.end);
        for (const Movement& movement : ledger.movements) {
            held[movement.from] -= movement.cost;
            held[movement.to] += movement.cost;
        }
        RC_ASSERT(held == ledger.balances);
        // A lot also has its share of the pool of its material.
        Cost in_lots;
        Cost in_accounts;
        for (Account each = kBoundaries; each < ledger.accounts.end; ++each) {
            const AccountKind kind = ledger.accounts.kind(each);
            if (kind == AccountKind::lot || kind == AccountKind::pool) in_accounts += held[each];
            if (kind != AccountKind::lot) continue;
            const Lot& lot = shop.all<Lot>()[ledger.accounts.index(each)];
            const auto pool = static_cast<Account>(shop.find(lot.material) - shop.all<Material>().data());
            const Cost& cost = ledger.lots[ledger.accounts.index(each)].cost;
            in_lots += cost;
            if (held[ledger.accounts.pools + pool].is_zero()) RC_ASSERT(cost == held[each]);
        }
        RC_ASSERT(in_lots == in_accounts);
    }));
}

TEST_CASE("every gram and piece stands in one term, at the end of every day") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        for (const Day day : days_of(ledger))
            for (const QuantityPartition& term : quantity_partitions(shop, ledger, day)) {
                RC_ASSERT(term.in + term.made == term.out());
                RC_ASSERT(term.stock >= 0);
                RC_ASSERT(term.in_progress >= 0);
            }
    }));
}

TEST_CASE("an empty lot holds no cost, and no lot holds less than nothing") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Ledger ledger = replay(test::random_shop(acts), kEnd);
        for (const LotState& lot : ledger.lots) {
            RC_ASSERT(lot.left >= 0);
            RC_ASSERT(lot.left > 0 || lot.cost.is_zero());
        }
    }));
}

TEST_CASE("the hours in the books are the hours logged") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Ledger ledger = replay(shop, kEnd);
        const Minutes in =
            -(ledger.balance(Boundary::hours).hands_on + ledger.balance(Boundary::already_here).hands_on);
        const bool nothing_left_out = std::ranges::none_of(
            ledger.findings, [](const Finding& finding) { return finding.code == FindingCode::nothing_in_it; });
        RC_PRE(nothing_left_out || in <= minutes_logged(shop));
        RC_ASSERT(in == minutes_logged(shop));
    }));
}

TEST_CASE("the books as of a day are the books with all later facts taken out") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Day day = kFirstDay + Days{*rc::gen::inRange(0, test::kDays + 300)};
        const Ledger as_of = replay(shop, day);
        const Shop earlier = test::without_later(shop, day);
        const Ledger taken_out = replay(earlier, day);
        RC_ASSERT(numbers(as_of) == numbers(taken_out));
        RC_ASSERT(as_of.findings.size() == taken_out.findings.size());
        RC_ASSERT(cost_partition(shop, as_of, day).in == cost_partition(earlier, taken_out, day).in);
    }));
}

TEST_CASE("a later day's ledger tells the same of an earlier day") {
    CHECK(rc::check([](const std::vector<Act>& acts, bool by_lot) {
        Shop shop = test::random_shop(acts);
        if (by_lot) shop.all<CostRule>().clear();
        const Day day = kFirstDay + Days{*rc::gen::inRange(0, test::kDays)};
        const Ledger then = replay(shop, day);
        const Ledger late = as_it_stood(shop, replay(shop, kEnd), day);
        RC_ASSERT(same(late, then));
        for (std::size_t i = 0; i < then.lots.size(); ++i) RC_ASSERT(same_lot(late.lots[i], then.lots[i]));
        RC_ASSERT(late.sold.size() == then.sold.size());
        RC_ASSERT(late.powder_sold.size() == then.powder_sold.size());
        RC_ASSERT(late.returned.size() == then.returned.size());
    }));
}

TEST_CASE("the order of typing and the names change no number") {
    CHECK(rc::check([](const std::vector<Act>& acts, unsigned seed) {
        const Shop shop = test::random_shop(acts);
        Shop other = shop;
        std::mt19937 random{seed};
        other.for_each_list([&](auto& list) {
            std::ranges::shuffle(list, random);
            for (auto& fact : list)
                if constexpr (requires { fact.code; }) fact.code = "renamed " + std::to_string(random());
        });
        other.sort();
        // Who worked where nobody is named goes by the people's codes: keep those.
        other.all<Person>() = shop.all<Person>();
        RC_ASSERT(numbers(replay(shop, kEnd)) == numbers(replay(other, kEnd)));
    }));
}

TEST_CASE("today's hourly target changes no stock value before today") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        const Shop shop = test::random_shop(acts);
        const Day today = kFirstDay + Days{*rc::gen::inRange(0, test::kDays)};
        Shop raised = shop;
        for (const Person& person : shop.all<Person>()) {
            Pay pay;
            pay.key.number = 900'000'000 + person.key.number;
            pay.code = "raised";
            pay.from = today;
            pay.person = person.key;
            pay.per_hour = Money::units(99);
            raised.all<Pay>().push_back(pay);
        }
        const Day before = today - Days{1};
        const CostPartition was = cost_partition(shop, replay(shop, kEnd), before);
        const CostPartition is = cost_partition(raised, replay(raised, kEnd), before);
        RC_ASSERT(was.stock == is.stock);
        RC_ASSERT(was.in_progress == is.in_progress);
    }));
}

TEST_CASE("splitting a delivery line changes no quantity, and no cost by more than a millionth a draw") {
    CHECK(rc::check([](const std::vector<Act>& acts) {
        std::vector<Act> plain;
        for (const Act& act : acts)
            if (act.what == 0 || act.what == 7 || act.what == test::kCostRuleAct)
                plain.push_back({act.what, act.day, act.a * 4, act.b * 4 + 1, 6});
        const Shop shop = test::random_shop(plain);
        Shop split = shop;
        std::int64_t key = 500'000'000;
        const auto lines = split.all<DeliveryLine>();
        for (const DeliveryLine& line : lines) {
            if (line.amount.quantity.in_base() % 2 != 0 || line.price.in_millionths() % 2 != 0) continue;
            Lot lot = *split.find(line.lot);
            lot.key.number = ++key;
            DeliveryLine half = line;
            half.key.number = ++key;
            half.position = 99;
            half.lot = lot.key;
            half.amount.quantity = Quantity{line.amount.quantity.kind(), line.amount.quantity.in_base() / 2};
            half.price = Money::millionths(line.price.in_millionths() / 2);
            auto& first = *std::ranges::find(split.all<DeliveryLine>(), line.key, &DeliveryLine::key);
            first.amount = half.amount;
            first.price = half.price;
            split.all<Lot>().push_back(lot);
            split.all<DeliveryLine>().push_back(half);
        }
        const Ledger whole = replay(shop, kEnd);
        const Ledger parts = replay(split, kEnd);
        const auto terms = quantity_partitions(shop, whole, kEnd);
        const auto split_terms = quantity_partitions(split, parts, kEnd);
        for (std::size_t i = 0; i < terms.size(); ++i) RC_ASSERT(terms[i].used == split_terms[i].used);
        const std::int64_t apart = cost_partition(shop, whole, kEnd).in_progress.materials.in_millionths() -
                                   cost_partition(split, parts, kEnd).in_progress.materials.in_millionths();
        RC_ASSERT(std::abs(apart) <= static_cast<std::int64_t>(parts.movements.size()));
    }));
}
