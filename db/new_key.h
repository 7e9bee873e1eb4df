// new_key.h - a key for a fact that was typed just now: 32 bits of seconds since 2020, so that tables grow at their
// end, and 31 random bits, so that two copies of a shop do not give the same one. Each is larger than the one before
// it: what was typed first stands first.
#pragma once

#include <cstdint>

#include "domain/values/key.h"

namespace dyestead::db {

std::int64_t new_key_number();

// The same without clock and chance: `seconds` since 2020, `chance` any number. In a new second it begins at random;
// within one, or when the clock was set back, it goes on by a random step of up to a million.
std::int64_t key_after(std::int64_t last, std::int64_t seconds, std::uint32_t chance);

template <class Fact>
Key<Fact> new_key() {
    return {new_key_number()};
}

}  // namespace dyestead::db
