// today.h - the day the desktop's clock says it is here. The rules never ask; they are told.
#pragma once

#include <wx/datetime.h>

#include "domain/values/moment.h"

namespace dyestead::gui {

inline Day today() {
    const wxDateTime now = wxDateTime::Now();
    return day_of(now.GetYear(), static_cast<unsigned>(now.GetMonth()) + 1, static_cast<unsigned>(now.GetDay()));
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

}  // namespace dyestead::gui
