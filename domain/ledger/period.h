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
    // From the start of the financial year, which begins on the first of a month (1 to 12).
    static constexpr Period year_to(Day last, unsigned month = 1) {
        const Day begins = day_of(year_of(last), month, 1);
        return {begins <= last ? begins : day_of(year_of(last) - 1, month, 1), last};
    }
};

}  // namespace dyestead
