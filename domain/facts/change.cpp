#include "domain/facts/change.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <type_traits>
#include <utility>
#include <vector>

namespace dyestead {
namespace {

// Ratios are equal as numbers; as records 1/2 and 50 % differ, for both come back as they were typed.
template <class T>
[[gnu::noinline]] bool same_content(const T& a, const T& b) {
    return a == b;
}
bool same_content(const Ratio& a, const Ratio& b) {
    return a.top == b.top && a.bottom == b.bottom;
}
bool same_content(const std::optional<Ratio>& a, const std::optional<Ratio>& b) {
    return a.has_value() == b.has_value() && (!a || same_content(*a, *b));
}

template <class Fact>
bool same_fact(const Fact& a, const Fact& b) {
    bool same = a.key == b.key;
    if constexpr (Line<Fact>)
        same = same && a.head == b.head && a.position == b.position;
    else
        same = same && a.code == b.code;
    for_each_field<Fact>([&](const auto& each) { same = same && same_content(a.*each.member, b.*each.member); });
    return same;
}

// Where each row of a merged list comes from, worked out on keys alone.
struct Source {
    bool put;
    std::size_t at;
};

using Numbers = std::vector<std::int64_t>;

// Requires: `list` in order of keys. Of two facts put under one key the later stays.
std::vector<Source> merged(const Numbers& list, const Numbers& put, Numbers removed) {
    std::vector<std::pair<std::int64_t, std::size_t>> order;
    for (std::size_t i = 0; i < put.size(); ++i) order.emplace_back(put[i], i);
    std::sort(order.begin(), order.end());
    std::sort(removed.begin(), removed.end());
    std::vector<Source> sources;
    sources.reserve(list.size() + put.size());
    auto next = order.begin();
    const auto take_put = [&] {
        const auto key = next->first;
        while (next + 1 != order.end() && (next + 1)->first == key) ++next;
        sources.push_back({true, next->second});
        ++next;
        return key;
    };
    for (std::size_t i = 0; i < list.size(); ++i) {
        while (next != order.end() && next->first < list[i]) take_put();
        if (next != order.end() && next->first == list[i])
            take_put();
        else if (!std::binary_search(removed.begin(), removed.end(), list[i]))
            sources.push_back({false, i});
    }
    while (next != order.end()) take_put();
    return sources;
}

template <class Fact>
Numbers numbers_of(const std::vector<Fact>& facts) {
    Numbers numbers;
    numbers.reserve(facts.size());
    for (const Fact& fact : facts) numbers.push_back(fact.key.number);
    return numbers;
}

// Not inlined, like all here that would be compiled again and again for every kind of fact.
template <class Fact>
[[gnu::noinline]] void copy(const Fact& from, Fact& to) {
    to = from;
}
template <class Fact>
[[gnu::noinline]] void move(Fact& from, Fact& to) {
    to = std::move(from);
}
template <class Fact>
[[gnu::noinline]] FactList<Fact> blank_facts(std::size_t size) {
    FactList<Fact> facts;
    std::vector<Fact>(size).swap(facts.list);
    return facts;
}

template <class Fact>
void apply_to(std::vector<Fact>& list, const std::vector<Fact>& put, const std::vector<Key<Fact>>& removed) {
    if (put.empty() && removed.empty()) return;
    Numbers gone;
    for (const Key<Fact> key : removed) gone.push_back(key.number);
    const auto sources = merged(numbers_of(list), numbers_of(put), std::move(gone));
    FactList<Fact> whole = blank_facts<Fact>(sources.size());
    for (std::size_t i = 0; i < sources.size(); ++i) {
        const auto& [from_put, at] = sources[i];
        if (from_put)
            copy(put[at], whole.list[i]);
        else
            move(list[at], whole.list[i]);
    }
    list.swap(whole.list);
}

constexpr std::size_t kNone = static_cast<std::size_t>(-1);

// The places of one key in both lists, or kNone. Requires: both in order of keys.
std::vector<std::pair<std::size_t, std::size_t>> side_by_side(const Numbers& from, const Numbers& to) {
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    std::size_t a = 0;
    std::size_t b = 0;
    while (a < from.size() || b < to.size()) {
        const bool in_from = a < from.size() && (b == to.size() || from[a] <= to[b]);
        const bool in_to = b < to.size() && (a == from.size() || to[b] <= from[a]);
        pairs.emplace_back(in_from ? a++ : kNone, in_to ? b++ : kNone);
    }
    return pairs;
}

}  // namespace

bool Change::is_empty() const {
    bool empty = removed_.empty();
    put.for_each_list([&](const auto& list) { empty = empty && list.empty(); });
    return empty;
}

Shop applied(Shop shop, const Change& change) {
    shop.for_each_list([&](auto& list) {
        using Fact = typename std::remove_reference_t<decltype(list)>::value_type;
        apply_to(list, change.put.all<Fact>(), change.removed_of<Fact>());
    });
    return shop;
}

Change difference(const Shop& from, const Shop& to) {
    Change change;
    to.for_each_list([&](const auto& after) {
        using Fact = typename std::remove_cvref_t<decltype(after)>::value_type;
        const auto& before = from.all<Fact>();
        std::vector<std::size_t> differ;
        for (const auto& [a, b] : side_by_side(numbers_of(before), numbers_of(after))) {
            if (b == kNone)
                change.remove(before[a].key);
            else if (a == kNone || !same_fact(before[a], after[b]))
                differ.push_back(b);
        }
        FactList<Fact> put = blank_facts<Fact>(differ.size());
        for (std::size_t i = 0; i < differ.size(); ++i) copy(after[differ[i]], put.list[i]);
        change.put.all<Fact>().swap(put.list);
    });
    return change;
}

bool same_shop(const Shop& a, const Shop& b) {
    return difference(a, b).is_empty();
}

}  // namespace dyestead
