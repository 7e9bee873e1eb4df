// span.h - a length of working time as it was stated: 90 min, ~2 h.
#pragma once

#include "domain/values/minutes.h"
#include "domain/values/unit.h"

namespace dyestead {

enum class TimeUnit : std::uint8_t { min, h };

struct Span {
    Minutes time;
    TimeUnit unit = TimeUnit::min;
    Mark mark = Mark::measured;
    friend constexpr bool operator==(const Span&, const Span&) = default;
};

}  // namespace dyestead
