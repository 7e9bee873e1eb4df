// change.h - what does one edit do to the records, and in what do two shops differ?
// Facts put (new ones, or ones that stand in for the fact of the same key) and keys removed. Pure:
// the only road into a shop file is db/open_shop.h.
#pragma once

#include <cstdint>
#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

class Change {
public:
    Shop put;

    // A fact both removed and put stays, as it was put.
    template <class Fact>
    void remove(Key<Fact> key) {
        removed_.push_back({kPlace<Fact>, key.number});
    }
    template <class Fact>
    std::vector<Key<Fact>> removed_of() const {
        std::vector<Key<Fact>> keys;
        for (const Removed& each : removed_)
            if (each.kind == kPlace<Fact>) keys.push_back({each.key});
        return keys;
    }

    bool is_empty() const;

private:
    struct Removed {
        std::size_t kind = 0;  // its place in ForEveryKind
        std::int64_t key = 0;
    };
    template <class Fact>
    static constexpr std::size_t kPlace = ForEveryKind<FactList>::place<Fact>();

    std::vector<Removed> removed_;
};

Shop applied(Shop shop, const Change& change);

// The change that makes `to` out of `from`: applied(from, difference(from, to)) is the same as `to`.
Change difference(const Shop& from, const Shop& to);

// The same keys with the same contents.
bool same_shop(const Shop& a, const Shop& b);

}  // namespace dyestead
