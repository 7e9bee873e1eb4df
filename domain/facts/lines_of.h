// lines_of.h - which lines belong to a head, in the order of their positions?
// Built once from a list; lists stand in key order, in which a head's lines are scattered.
#pragma once

#include <algorithm>
#include <cassert>
#include <cstdint>
#include <span>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

template <Line Fact>
class LinesOf {
public:
    using Head = typename Fact::Head;

    // Owns: nothing; the shop must outlive it, unchanged.
    explicit LinesOf(const Shop& shop) : shop_{shop} {
        lines_.reserve(shop.all<Fact>().size());
        first_.reserve(shop.all<Head>().size() + 1);
        if (!add_all_in_order()) add_all_sorted();
        while (first_.size() <= shop.all<Head>().size()) begin_head();
    }

    // Requires: the head stands in the shop's own list.
    std::span<const Fact* const> operator()(const Head& head) const {
        const auto place = static_cast<std::size_t>(&head - shop_.all<Head>().data());
        assert(place + 1 < first_.size());
        return std::span{lines_}.subspan(first_[place], first_[place + 1] - first_[place]);
    }
    // Nothing where there is no such head.
    std::span<const Fact* const> operator()(Key<Head> key) const {
        const Head* head = shop_.find(key);
        return head == nullptr ? std::span<const Fact* const>{} : (*this)(*head);
    }

private:
    // Sorted instead of the lines themselves, which are large and lie far apart.
    struct Place {
        Key<Head> head;
        std::int32_t position = 0;
        std::uint32_t at = 0;  // in the list, whose order is that of the keys

        friend auto operator<=>(const Place&, const Place&) = default;
    };

    // As they mostly stand already. False where they do not; then nothing is added.
    bool add_all_in_order() {
        Place last{{INT64_MIN}};
        for (const Fact& line : shop_.all<Fact>()) {
            const Place place{line.head, line.position};
            if (place < last) {
                lines_.clear();
                first_.clear();
                return false;
            }
            add(line);
            last = place;
        }
        return true;
    }
    void add_all_sorted() {
        const std::vector<Fact>& list = shop_.all<Fact>();
        std::vector<Place> places;
        places.reserve(list.size());
        for (const Fact& line : list)
            places.push_back({line.head, line.position, static_cast<std::uint32_t>(places.size())});
        std::ranges::sort(places);
        for (const Place& place : places) add(list[place.at]);
    }
    // Requires: heads rise. A line whose head is on no record is left out.
    void add(const Fact& line) {
        const std::vector<Head>& heads = shop_.all<Head>();
        while (first_.size() < heads.size() && heads[first_.size()].key <= line.head) begin_head();
        if (!first_.empty() && heads[first_.size() - 1].key == line.head) lines_.push_back(&line);
    }
    void begin_head() { first_.push_back(static_cast<std::uint32_t>(lines_.size())); }

    const Shop& shop_;
    std::vector<const Fact*> lines_;
    std::vector<std::uint32_t> first_;  // of each head of the shop, its first place in lines_; and the end
};

}  // namespace dyestead
