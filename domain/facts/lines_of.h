// lines_of.h - which lines belong to a head, in the order of their positions?
// Built once from a list; lists stand in key order, in which a head's lines are scattered.
#pragma once

#include <algorithm>
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
    explicit LinesOf(const Shop& shop) {
        const std::vector<Fact>& list = shop.all<Fact>();
        std::vector<Place> places;
        places.reserve(list.size());
        for (const Fact& line : list)
            places.push_back({line.head, line.position, static_cast<std::uint32_t>(places.size())});
        if (!std::ranges::is_sorted(places)) std::ranges::sort(places);
        lines_.reserve(places.size());
        for (const Place& place : places) {
            if (heads_.empty() || heads_.back().head != place.head) heads_.push_back({place.head, lines_.size()});
            lines_.push_back(&list[place.at]);
        }
    }

    std::span<const Fact* const> operator()(Key<Head> head) const {
        const auto found = std::ranges::lower_bound(heads_, head, {}, &Begin::head);
        if (found == heads_.end() || found->head != head) return {};
        const auto next = found + 1;
        return std::span{lines_}.subspan(
            found->first, (next == heads_.end() ? lines_.size() : next->first) - found->first);
    }

private:
    // Sorted instead of the lines themselves, which are large and lie far apart.
    struct Place {
        Key<Head> head;
        std::int32_t position = 0;
        std::uint32_t at = 0;  // in the list, whose order is that of the keys

        friend auto operator<=>(const Place&, const Place&) = default;
    };
    struct Begin {
        Key<Head> head;
        std::size_t first = 0;  // place in lines_
    };

    std::vector<const Fact*> lines_;
    std::vector<Begin> heads_;
};

}  // namespace dyestead
