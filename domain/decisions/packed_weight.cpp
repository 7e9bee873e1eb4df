#include "domain/decisions/packed_weight.h"

#include <array>

namespace dyestead {
namespace {

// Up to so much, in milligrams or microlitres: a share in thousandths, or else an amount.
struct Row {
    std::int64_t up_to;
    std::int64_t thousandths;
    std::int64_t amount;
};

constexpr std::int64_t kGram = 1'000;
constexpr std::array<Row, 8> kTable{{{50 * kGram, 90, 0},
                                     {100 * kGram, 0, 4'500},
                                     {200 * kGram, 45, 0},
                                     {300 * kGram, 0, 9'000},
                                     {500 * kGram, 30, 0},
                                     {1'000 * kGram, 0, 15'000},
                                     {10'000 * kGram, 15, 0},
                                     {15'000 * kGram, 0, 150'000}}};
constexpr std::int64_t kThousandthsAbove = 10;  // in the United Kingdom only
constexpr std::int64_t kLeast = 5 * kGram;
constexpr std::int64_t kTenth = 100;

constexpr std::int64_t share_rounded_up(std::int64_t declared, std::int64_t thousandths) {
    const Wide whole = static_cast<Wide>(declared) * thousandths;
    constexpr Wide kStep = static_cast<Wide>(kTenth) * 1'000;
    return narrow((whole + kStep - 1) / kStep) * kTenth;
}

}  // namespace

std::optional<Quantity> tolerated_shortfall(Quantity declared) {
    const std::int64_t base = declared.in_base();
    if ((declared.kind() != Kind::mass && declared.kind() != Kind::volume) || base < kLeast) return std::nullopt;
    for (const Row& row : kTable) {
        if (base > row.up_to) continue;
        return Quantity{declared.kind(), row.amount > 0 ? row.amount : share_rounded_up(base, row.thousandths)};
    }
    return Quantity{declared.kind(), share_rounded_up(base, kThousandthsAbove)};
}

}  // namespace dyestead
