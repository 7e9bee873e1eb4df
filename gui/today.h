// today.h - the day and the time the desktop's clock says it is here. The rules never ask; they are told.
#pragma once

#include <wx/datetime.h>

#include <chrono>

#include "domain/values/moment.h"
#include "gui/models/vat/at_the_pan.h"

namespace dyestead::gui {

inline Day day_at(const wxDateTime& time) {
    return day_of(time.GetYear(), static_cast<unsigned>(time.GetMonth()) + 1, static_cast<unsigned>(time.GetDay()));
}

inline Day today() {
    return day_at(wxDateTime::Now());
}

// How many minutes the clock on the wall is ahead of UTC at that time of that day.
inline int minutes_ahead_of_utc(Moment wall) {
    wall.utc_offset = 0;
    const std::chrono::year_month_day date{wall.day};
    const wxDateTime then(static_cast<wxDateTime::wxDateTime_t>(static_cast<unsigned>(date.day())),
                          static_cast<wxDateTime::Month>(static_cast<unsigned>(date.month()) - 1),
                          static_cast<int>(date.year()), static_cast<wxDateTime::wxDateTime_t>(wall.minute / 60),
                          static_cast<wxDateTime::wxDateTime_t>(wall.minute % 60));
    constexpr std::int64_t kSeconds = 60;
    return static_cast<int>(universal(wall) - static_cast<std::int64_t>(then.GetTicks()) / kSeconds);
}

inline WallClock wall_clock() {
    constexpr int kMinutes = 60;
    return {
        .now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()), .local = [](Instant moment) {
            const wxDateTime time{static_cast<std::time_t>(moment.time_since_epoch().count())};
            Moment wall{day_at(time), time.GetHour() * kMinutes + time.GetMinute(), 0};
            wall.utc_offset = minutes_ahead_of_utc(wall);
            return wall;
        }};
}

}  // namespace dyestead::gui
