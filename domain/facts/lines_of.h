// lines_of.h - which lines belong to a head, in the order of their positions?
// Built once from a list; lists stand in key order, in which a head's lines are scattered.
#pragma once

#include <algorithm>
#include <span>
#include <tuple>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

template <Line Fact>
class LinesOf {
public:
    // Owns: nothing; the shop must outlive it, unchanged.
    explicit LinesOf(const Shop& shop) {
        lines_.reserve(shop.all<Fact>().size());
        for (const Fact& line : shop.all<Fact>()) lines_.push_back(&line);
        std::ranges::sort(lines_, [](const Fact* a, const Fact* b) {
            return std::tie(a->head, a->position, a->key) < std::tie(b->head, b->position, b->key);
        });
    }

    std::span<const Fact* const> operator()(Key<typename Fact::Head> head) const {
        const auto head_of = [](const Fact* line) { return line->head; };
        return {
            std::ranges::lower_bound(lines_, head, {}, head_of), std::ranges::upper_bound(lines_, head, {}, head_of)};
    }

private:
    std::vector<const Fact*> lines_;
};

}  // namespace dyestead
