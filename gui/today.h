// today.h - the day and the time the desktop's clock says it is here. The rules never ask; they are told.
#pragma once

#include <wx/datetime.h>

#include <chrono>

#include "domain/values/date.h"
#include "gui/models/vat/at_the_pan.h"

namespace dyestead::gui {

inline Day day_at(const wxDateTime& time) {
    return day_of(time.GetYear(), static_cast<unsigned>(time.GetMonth()) + 1, static_cast<unsigned>(time.GetDay()));
}

inline Day today() {
    return day_at(wxDateTime::Now());
}

inline WallClock wall_clock() {
    constexpr int kMinutes = 60;
    return {
        .now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now()), .local = [](Instant moment) {
            const wxDateTime time{static_cast<std::time_t>(moment.time_since_epoch().count())};
            return LocalTime{day_at(time), time.GetHour() * kMinutes + time.GetMinute()};
        }};
}

}  // namespace dyestead::gui
