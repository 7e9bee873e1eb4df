// today.h - the day the desktop's clock says it is here. The rules never ask; they are told.
#pragma once

#include <wx/datetime.h>

#include "domain/values/date.h"

namespace dyestead::gui {

inline Day today() {
    const wxDateTime now = wxDateTime::Now();
    return day_of(now.GetYear(), static_cast<unsigned>(now.GetMonth()) + 1, static_cast<unsigned>(now.GetDay()));
}

}  // namespace dyestead::gui
