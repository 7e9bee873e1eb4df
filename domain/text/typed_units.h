// typed_units.h - which unit is a word that somebody typed: `Kilos`, `us pt`, `tsp`, `sq ft`, `buckets`?
// For typed.h alone.
#pragma once

#include <string>

#include "domain/text/typed.h"

namespace dyestead {

struct TypedUnit {
    Kind kind;
    Ratio base;  // base units in one of these
    Unit unit;
    Mark mark = Mark::measured;
};

// `words`: small letters, one blank between two words. The maker's own measures come first: a cup may be one of them.
// Trouble no_such_unit, us_or_uk, which_cup.
Read<TypedUnit> read_typed_unit(std::string_view words, const Measuring& measuring);

}  // namespace dyestead
