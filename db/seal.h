// seal.h - is what stands in the file what was written there?
// For each kind of fact: how many rows, and the sum (modulo 2^64) of a hash of each row's contents.
// Kept in the same transaction as the rows, checked whenever a shop is read. SQLite's own check does
// not look at contents: it finds nothing wrong with a flipped bit inside a number.
#pragma once

#include <array>
#include <cstdint>
#include <string>

#include "db/hash.h"
#include "db/row.h"

namespace dyestead::db {

struct Seal {
    std::int64_t rows = 0;
    std::uint64_t sum = 0;

    // `fact` is of that kind.
    void add(const RowKind& kind, const void* fact);
    void take_away(const RowKind& kind, const void* fact);

    friend bool operator==(const Seal&, const Seal&) = default;
};

// The bytes of a row that are hashed; the same on every machine.
class SealBytes final : public Sink {
public:
    void whole(std::int64_t number) override;
    void text(std::string_view words) override;
    void nothing() override { bytes_ += 'n'; }
    const std::string& bytes() const { return bytes_; }

private:
    std::string bytes_;
};

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
    // By the kind's place in ForEveryKind.
    Seal& at(std::size_t kind) { return each_[kind]; }
    const Seal& at(std::size_t kind) const { return each_[kind]; }
    template <class Fact>
    void add(const Fact& fact) {
        of<Fact>().add(row_kind<Fact>(), &fact);
    }
    template <class Fact>
    void take_away(const Fact& fact) {
        of<Fact>().take_away(row_kind<Fact>(), &fact);
    }
    // One number for the whole shop, as the log keeps it before and after each change.
    std::int64_t total() const;
    friend bool operator==(const Seals&, const Seals&) = default;

private:
    std::array<Seal, ForEveryKind<FactList>::kKinds> each_{};
};

Seals seals_of(const Shop& shop);

}  // namespace dyestead::db
