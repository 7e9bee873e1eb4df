// stand.h - looking ahead, where does the maker stand?
#pragma once

#include <cstdint>

namespace dyestead {

// What is spent either way no longer counts. Before sowing all of it counts; with leaf standing the garden is spent;
// with pigment dry the vats are too, and only what else the powder could do is left to decide.
enum class Stand : std::uint8_t { before_sowing, leaf_standing, pigment_dry };

}  // namespace dyestead
