#include "db/hash.h"

#include <xxhash.h>

namespace dyestead::db {

std::uint64_t hash_of(std::string_view bytes) {
    return XXH3_64bits(bytes.data(), bytes.size());
}

}  // namespace dyestead::db
