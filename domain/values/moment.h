// moment.h - when by the clock was something done? Local time with its distance from UTC, so that the night the
// clocks change makes no wait longer or shorter than it was.
#pragma once

#include "domain/values/date.h"
#include "domain/values/minutes.h"

namespace dyestead {

struct Moment {
    Day day;
    int minute = 0;      // of the day, by the clock on the wall: 0 to 1439
    int utc_offset = 0;  // minutes that the clock on the wall is ahead of UTC
    friend constexpr bool operator==(Moment, Moment) = default;
};

inline constexpr int kMinutesInDay = 24 * 60;
inline constexpr int kFurthestUtcOffset = 14 * 60;

// Whole minutes since the beginning of 1970 in UTC: what is later is more.
constexpr std::int64_t universal(Moment moment) {
    return std::int64_t{moment.day.time_since_epoch().count()} * kMinutesInDay + moment.minute - moment.utc_offset;
}

constexpr Minutes between(Moment from, Moment to) {
    return Minutes::whole(universal(to) - universal(from));
}

}  // namespace dyestead
