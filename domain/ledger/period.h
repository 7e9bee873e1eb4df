// period.h - which days does a statement speak of?
#pragma once

#include "domain/values/date.h"

namespace dyestead {

// Both days belong to it.
struct Period {
    Day first;
    Day last;

    constexpr bool contains(Day day) const { return first <= day && day <= last; }
    constexpr Day before() const { return first - Days{1}; }

    // From before all records.
    static constexpr Period up_to(Day last) { return {Day{Days{-1'000'000}}, last}; }
    static constexpr Period year_to(Day last) { return {day_of(year_of(last), 1, 1), last}; }
};

}  // namespace dyestead
