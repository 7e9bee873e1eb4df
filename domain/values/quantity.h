// quantity.h - how much of something: a whole number of a base unit, and which kind of amount it is.
// Adding a mass to a volume is our own bug (KindsMixed); turning one into the other needs the
// material's density (facts/material_amount.h).
#pragma once

#include <compare>
#include <cstdint>
#include <stdexcept>
#include <type_traits>

#include "domain/values/share.h"

namespace dyestead {

enum class Kind : std::uint8_t {
    mass,    // milligrams
    volume,  // microlitres
    count,   // thousandths of a piece
    area,    // square centimetres
    energy,  // watt-hours
};

struct KindsMixed : std::logic_error {
    KindsMixed() : std::logic_error("amounts of different kinds were added") {}
};

class Quantity {
public:
    constexpr Quantity() = default;
    constexpr Quantity(Kind kind, std::int64_t base) : base_{base}, kind_{kind} {}
    static constexpr Quantity milligrams(std::int64_t n) { return {Kind::mass, n}; }
    static constexpr Quantity grams(std::int64_t n) { return {Kind::mass, narrow(static_cast<Wide>(n) * 1'000)}; }
    static constexpr Quantity microlitres(std::int64_t n) { return {Kind::volume, n}; }
    static constexpr Quantity pieces(std::int64_t n) { return {Kind::count, narrow(static_cast<Wide>(n) * 1'000)}; }
    static constexpr Quantity square_centimetres(std::int64_t n) { return {Kind::area, n}; }
    static constexpr Quantity watt_hours(std::int64_t n) { return {Kind::energy, n}; }

    constexpr Kind kind() const { return kind_; }
    constexpr std::int64_t in_base() const { return base_; }
    constexpr bool is_zero() const { return base_ == 0; }

    constexpr Quantity& operator+=(Quantity other) {
        if (kind_ != other.kind_) throw KindsMixed{};
        base_ = checked_add(base_, other.base_);
        return *this;
    }
    constexpr Quantity& operator-=(Quantity other) {
        if (kind_ != other.kind_) throw KindsMixed{};
        base_ = checked_subtract(base_, other.base_);
        return *this;
    }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return a += b; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return a -= b; }
    friend constexpr bool operator==(Quantity, Quantity) = default;
    // Ordered only within one kind.
    friend constexpr std::strong_ordering operator<=>(Quantity a, Quantity b) {
        if (a.kind_ != b.kind_) throw KindsMixed{};
        return a.base_ <=> b.base_;
    }

private:
    std::int64_t base_{0};
    Kind kind_{Kind::mass};
};

// The most a single fact may state, in base units of any kind: 1,000,000 kg or 1,000,000 l.
inline constexpr std::int64_t kLargestStatedBase = 1'000'000'000'000;

static_assert(std::is_trivially_copyable_v<Quantity>);
static_assert(!std::is_convertible_v<int, Quantity>);

}  // namespace dyestead
