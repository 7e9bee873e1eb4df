// breakeven.h - how far would one thing have to move, all else held, for home-grown and bought-in
// colour to come out even? Six closed forms of D = 0 over the model; a null where no value does it.
#pragma once

#include <cstdint>
#include <optional>

#include "domain/decisions/model.h"

namespace dyestead {

// Why a break-even has no value.
enum class NoBreakeven : std::uint8_t {
    exists,
    not_known,      // a price, a colourant to compare with, or a dried vat is missing
    no_target,      // full margin is not known without an hourly target
    fees_take_all,  // a higher price would bring nothing
    no_difference_in_hours,
    even_free_would_not_pay,
    pigment_costs_nothing,
    no_vat_big_enough,
    size_does_not_matter,
    no_cash_form,
    nothing_left_to_do,  // looking ahead with the pigment dry
};

struct Breakeven {
    std::optional<double> value{};
    NoBreakeven why = NoBreakeven::not_known;
};

// The value at which D = 0. Home is ahead above it, for minutes_per_vat below it; for hourly_target
// below it where home takes more hours, above it where home takes fewer. The first two, minutes and
// the bought-in price may be negative: then home is ahead, or behind, at any real value.
struct Breakevens {
    Breakeven premium_per_bar;  // shelf price of home over bought-in
    Breakeven hourly_target;    // the very number Difference::earned_per_hour gives
    Breakeven yield_g_per_kg;
    Breakeven harvest_kg_per_vat;
    Breakeven hands_on_minutes_per_vat;
    Breakeven bought_price_per_gram;  // landed
};

// The `_cash` forms are those of the same model at an hourly target of nought, less the two that are
// about hours.
Breakevens breakevens(const Model& model);
Breakevens cash_breakevens(const Model& model);

}  // namespace dyestead
