// calendar_report.h - on which days does something fall due: bars out of cure, orders to send, fairs, the last day to
// pour for them, sowings, what goes off? Also for a calendar of another program.
#pragma once

#include "domain/ledger/ledger.h"
#include "reports/document.h"

namespace dyestead::reports {

// From the day of the books on.
Document calendar_report(const Shop& shop, const Ledger& ledger);

}  // namespace dyestead::reports
