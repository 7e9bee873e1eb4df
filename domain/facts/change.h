// change.h - what does one edit do to the records, and in what do two shops differ?
// Facts put (new ones, or ones that stand in for the fact of the same key) and keys removed. Pure:
// the only road into a shop file is db/open_shop.h.
#pragma once

#include <vector>

#include "domain/facts/shop.h"

namespace dyestead {

template <class Fact>
struct KeyList {
    std::vector<Key<Fact>> keys;
};

struct Change {
    Shop put;
    ForEveryKind<KeyList> removed;

    Change();
    Change(const Change& other);
    Change(Change&& other) noexcept;
    Change& operator=(const Change& other);
    Change& operator=(Change&& other) noexcept;
    ~Change();

    // A fact both removed and put stays, as it was put.
    template <class Fact>
    void remove(Key<Fact> key) {
        removed.template of<Fact>().keys.push_back(key);
    }
    template <class Fact>
    const std::vector<Key<Fact>>& removed_of() const {
        return removed.template of<Fact>().keys;
    }

    bool is_empty() const;
};

Shop applied(Shop shop, const Change& change);

// The change that makes `to` out of `from`: applied(from, difference(from, to)) is the same as `to`.
Change difference(const Shop& from, const Shop& to);

// The same keys with the same contents.
bool same_shop(const Shop& a, const Shop& b);

}  // namespace dyestead
