// in_turn.h - which fact has a key, where keys are mostly asked for in the order in which the facts stand? Whoever goes
// through records in the order of their days does so, and a search over all of them would fetch many for each found.
#pragma once

#include <algorithm>

#include "domain/facts/shop.h"

namespace dyestead {

template <class Fact>
class InTurn {
public:
    // Owns: nothing; the shop must outlive it, unchanged.
    explicit InTurn(const Shop& shop) : shop_{shop} {}

    // Null when no such fact is recorded, as shop.find(key).
    const Fact* find(Key<Fact> key) {
        constexpr std::size_t kNext = 8;
        const auto& list = shop_.all<Fact>();
        const std::size_t end = std::min(list.size(), last_ + kNext);
        for (std::size_t i = last_; i < end && list[i].key <= key; ++i) {
            if (list[i].key != key) continue;
            last_ = i;
            return &list[i];
        }
        const Fact* found = shop_.find(key);
        if (found != nullptr) last_ = static_cast<std::size_t>(found - list.data());
        return found;
    }

private:
    const Shop& shop_;
    std::size_t last_ = 0;  // where the last one found stands
};

}  // namespace dyestead
