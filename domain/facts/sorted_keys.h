// sorted_keys.h - where in a list does a key stand? The keys of facts lie far apart, each in its fact, so that every
// one looked at is fetched anew: as few as can be are.
#pragma once

#include <cstddef>
#include <cstdint>

namespace dyestead {

class SortedKeys {
public:
    // `first`: the key of the first of `size` facts, which are `stride` bytes each. Requires: size > 0, rising keys.
    SortedKeys(const std::int64_t* first, std::size_t stride, std::size_t size)
        : first_{reinterpret_cast<const char*>(first)}, stride_{stride}, size_{size} {}

    // The place of the key; `size` where it is not there.
    std::size_t find(std::int64_t key) const;

private:
    std::int64_t at(std::size_t place) const {
        return *reinterpret_cast<const std::int64_t*>(first_ + place * stride_);
    }
    std::size_t guess(std::int64_t key) const;

    const char* first_;
    std::size_t stride_;
    std::size_t size_;
};

}  // namespace dyestead
