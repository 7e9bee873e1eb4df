// key.h - the name the program itself gives a fact, a line or a lot: 63 bits that never change.
// A key knows what it is the key of, so that a supplier's key cannot stand where a material's is wanted.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <type_traits>

namespace dyestead {

template <class Fact>
struct Key {
    std::int64_t number = 0;  // 0: none yet

    friend constexpr auto operator<=>(Key, Key) = default;
};

static_assert(std::is_trivially_copyable_v<Key<int>>);

// The key of a fact of any kind, beside the name of its table.
struct AnyKey {
    std::string table;
    std::int64_t number = 0;

    friend bool operator==(const AnyKey&, const AnyKey&) = default;
};

}  // namespace dyestead
