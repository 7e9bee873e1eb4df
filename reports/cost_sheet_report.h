// cost_sheet_report.h - what did one batch cost: what went in, whose hours, and what comes to one bar?
#pragma once

#include <optional>
#include <variant>

#include "domain/ledger/ledger.h"
#include "domain/text/trouble.h"
#include "reports/document.h"

namespace dyestead::reports {

// Requires: the batch is on record.
Document cost_sheet(const Shop& shop, const Ledger& ledger, Key<Batch> batch);

// `of`: the code of a batch, or of its lot of bars; the batch cut last without it.
std::variant<Document, Trouble> cost_sheet_report(const Shop& shop, const Ledger& ledger,
                                                  const std::optional<std::string>& of);

}  // namespace dyestead::reports
