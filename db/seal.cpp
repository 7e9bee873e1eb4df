#include "db/seal.h"

namespace dyestead::db {
namespace {

std::uint64_t hash_of_row(const RowKind& kind, const void* fact) {
    SealBytes bytes;
    kind.store(fact, bytes);
    return hash_of(bytes.bytes());
}

}  // namespace

void SealBytes::whole(std::int64_t number) {
    bytes_ += 'w';
    const auto bits = static_cast<std::uint64_t>(number);
    for (unsigned shift = 0; shift < 64; shift += 8) bytes_ += static_cast<char>((bits >> shift) & 0xFF);
}

void SealBytes::text(std::string_view words) {
    whole(static_cast<std::int64_t>(words.size()));
    bytes_ += words;
}

void Seal::add(const RowKind& kind, const void* fact) {
    ++rows;
    sum += hash_of_row(kind, fact);
}

void Seal::take_away(const RowKind& kind, const void* fact) {
    --rows;
    sum -= hash_of_row(kind, fact);
}

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
