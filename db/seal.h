// seal.h - is what stands in the file what was written there?
// For each kind of fact: how many rows, and the sum (modulo 2^64) of a hash of each row's contents.
// Kept in the same transaction as the rows, checked whenever a shop is read. SQLite's own check does
// not look at contents: it finds nothing wrong with a flipped bit inside a number.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <tuple>

#include "db/column.h"
#include "db/hash.h"

namespace dyestead::db {

struct Seal {
    std::int64_t rows = 0;
    std::uint64_t sum = 0;
    friend bool operator==(const Seal&, const Seal&) = default;
};

// The bytes of a row that are hashed; the same on every machine.
class SealBytes {
public:
    void whole(std::int64_t number) {
        bytes_ += 'w';
        const auto bits = static_cast<std::uint64_t>(number);
        for (unsigned shift = 0; shift < 64; shift += 8) bytes_ += static_cast<char>((bits >> shift) & 0xFF);
    }
    void text(std::string_view words) {
        whole(static_cast<std::int64_t>(words.size()));
        bytes_ += words;
    }
    void nothing() { bytes_ += 'n'; }
    const std::string& bytes() const { return bytes_; }

private:
    std::string bytes_;
};

template <class Fact>
std::uint64_t hash_of_row(const Fact& fact) {
    SealBytes bytes;
    store_fact(fact, bytes);
    return hash_of(bytes.bytes());
}

class Seals {
public:
    template <class Fact>
    Seal& of() {
        return each_[ForEveryKind<FactList>::place<Fact>()];
    }
    template <class Fact>
    const Seal& of() const {
        return each_[ForEveryKind<FactList>::place<Fact>()];
    }
    template <class Fact>
    void add(const Fact& fact) {
        ++of<Fact>().rows;
        of<Fact>().sum += hash_of_row(fact);
    }
    template <class Fact>
    void take_away(const Fact& fact) {
        --of<Fact>().rows;
        of<Fact>().sum -= hash_of_row(fact);
    }
    // One number for the whole shop, as the log keeps it before and after each change.
    std::int64_t total() const;
    friend bool operator==(const Seals&, const Seals&) = default;

private:
    std::array<Seal, ForEveryKind<FactList>::kKinds> each_{};
};

Seals seals_of(const Shop& shop);

}  // namespace dyestead::db
