#include "db/seal.h"

namespace dyestead::db {

std::int64_t Seals::total() const {
    SealBytes bytes;
    for (const Seal& seal : each_) {
        bytes.whole(seal.rows);
        bytes.whole(static_cast<std::int64_t>(seal.sum));
    }
    return static_cast<std::int64_t>(hash_of(bytes.bytes()));
}

Seals seals_of(const Shop& shop) {
    Seals seals;
    shop.for_each_list([&](const auto& list) {
        for (const auto& fact : list) seals.add(fact);
    });
    return seals;
}

}  // namespace dyestead::db
