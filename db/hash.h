// hash.h - the one hash of the shop file: XXH3, 64 bits. For keys made from names and for seals;
// it notices accidents, it does not keep anyone out.
#pragma once

#include <cstdint>
#include <string_view>

namespace dyestead::db {

std::uint64_t hash_of(std::string_view bytes);

}  // namespace dyestead::db
