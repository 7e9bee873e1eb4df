// ruling.h - what do the differences come to: grow it, buy it in, leave it plain, or say nothing yet?
// Tried in a fixed order; a usual, a bad and a good year count, at the hurdle of one hour.
#pragma once

#include <cstdint>
#include <optional>

namespace dyestead {

enum class RulingWord : std::uint8_t { too_soon, no_target, leave_plain, grow, story_only, buy_in, too_close };

// The record that is missing first.
enum class MissingRecord : std::uint8_t {
    none,
    dried_vat,
    shade_test,
    second_season,
    bought_match,
    base_recipe,  // a loaf in a recipe for this colour, poured and cut, with its dose
    price,        // of a bar, or of the bought-in colourant
};

struct Ruling {
    RulingWord word = RulingWord::too_soon;
    MissingRecord missing = MissingRecord::none;
};

// One bar, home less bought-in, at the hurdle: with today's premium and with none.
struct AtHurdle {
    double with_premium = 0;
    double without_premium = 0;
};

struct RulingInput {
    MissingRecord missing = MissingRecord::none;
    std::optional<double> hurdle;
    std::optional<double> home_less_plain;  // at the hurdle; empty: no plain price
    std::optional<double> bought_less_plain;
    AtHurdle usual;
    AtHurdle bad;
    AtHurdle good;
};

Ruling rule(const RulingInput& input);

}  // namespace dyestead
