// new_key.h - a key for a fact that was typed just now: 32 bits of seconds since 2020, so that tables
// grow at their end, and 31 random bits, so that two copies of a shop do not give the same one.
#pragma once

#include <cstdint>

#include "domain/values/key.h"

namespace dyestead::db {

std::int64_t new_key_number();

template <class Fact>
Key<Fact> new_key() {
    return {new_key_number()};
}

}  // namespace dyestead::db
