// vat_spread.h - how much do a colour's vats differ from each other, and from season to season? See doubt.h.
#pragma once

#include <array>
#include <vector>

#include "domain/decisions/doubt.h"

namespace dyestead {

// In logs: g a kilo, minutes over those usual, strength.
inline constexpr std::size_t kSpreads = 3;
using Spreads = std::array<double, kSpreads>;

struct VatSpread {
    int vats = 0;
    int seasons = 0;
    Spreads mean{};
    std::array<Spreads, kSpreads> root{};  // lower triangle; root times its transpose is the covariance
    double season_share = 0.5;             // of the variance that all vats of a summer have together
};

// Of the vats that gave powder. Requires: two of them.
VatSpread vat_spread(const DoubtInput& input);

// The three numbers of a vat; without a shade test of its powder the strength is that of the model.
Spreads logs_of(const VatPoint& vat, const Model& model);

}  // namespace dyestead
