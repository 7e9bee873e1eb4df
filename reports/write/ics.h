// ics.h - the days on which something falls due, as a file that calendars take in (iCalendar, RFC 5545).
#pragma once

#include <string>

#include "reports/document.h"

namespace dyestead::reports {

// One all-day event for each day; the same document gives the same bytes. Requires: document.days.
std::string write_ics(const Document& document);

}  // namespace dyestead::reports
