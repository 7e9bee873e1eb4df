// trace_report.h - from which records does this figure come, and where did the goods of this lot go?
#pragma once

#include <string>
#include <variant>

#include "domain/ledger/ledger.h"
#include "domain/ledger/period.h"
#include "domain/text/trouble.h"
#include "reports/document.h"

namespace dyestead::reports {

// `of`: the code of a lot, batch, planting or vat: all that went into it, and for a lot where it went.
// Or a term of the books: in, sold, lost, given, period as they grew over the period; stock and
// in-progress as they stood at its end.
std::variant<Document, Trouble> trace_report(const Shop& shop, const Ledger& ledger,
                                             const std::optional<std::string>& of, Period period);

}  // namespace dyestead::reports
